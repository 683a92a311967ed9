import { setAsideReason } from '../bench/words.js';
import { clock } from '../core/format.js';
import { post, put } from '../core/http.js';
import { newId } from '../core/ids.js';
import { t } from '../core/texts.js';
import { html, nothing } from '../kit/kit.js';
import './change.js';
import { typedText } from './typed.js';

/** The form that sets a light reading aside, or takes that back. */
export function asideForm(reading, page) {
  const back = setAsideReason(reading) !== null;
  const about = { reading: typedText(reading.reading, page.catalogue.units), time: clock(reading.readAt) };
  const request = { readingId: reading.id, reason: null };
  const ask = async ({ reason = '' }) => {
    request.reason = back ? null : reason.trim();
    return { preview: await post('/api/light-set-asides/preview', request), lead: t(back ? 'page.light.ifTakenBack' : 'page.light.ifSetAside', about) };
  };
  return html`<bw-light-change class="whole" .heading=${t(back ? 'page.light.takeBackThis' : 'page.light.setAsideThis', about)}
    .label=${t(back ? 'page.desk.takeBackReading' : 'page.desk.setAsideDo')} .ask=${ask} .write=${writing('/api/light-set-asides', request)}
    @saved=${page.changed} @left=${page.leave} .fields=${back ? nothing : html`
    <bw-field name="reason" maxlength="120" .label=${t('page.desk.setAsideReason')} .hint=${t('page.light.setAsideHint')}></bw-field>`}></bw-light-change>`;
}

/** Sends what was asked about, under one id however often it is pressed. */
function writing(path, request) {
  const id = newId();
  return () => put(`${path}/${id}`, request);
}
