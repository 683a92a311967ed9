import { serverClock } from '../core/clock.js';
import { clock } from '../core/format.js';
import { put } from '../core/http.js';
import { newId } from '../core/ids.js';
import { t } from '../core/texts.js';
import { html, nothing } from '../kit/kit.js';
import { standingAnnouncement } from '../live/room.js';

const MINUTES = ['', '5', '10', '30', '60'];

let freshId = newId();
let minutes = '';

/** One line to the whole class: what stands, and a form for the next. */
export function announce({ day, room }, { reload }) {
  const standing = standingAnnouncement(room?.body, serverClock.now());
  return html`<section class="flow" aria-labelledby="announce"><h2 id="announce">${t('page.lesson.announce')}</h2>
    ${standing ? html`<div class="apart"><p>${t('page.quoted', { words: standing.words })} <span class="soft small">${standing.until
        ? t('page.lesson.until', { time: clock(standing.until) }) : t('page.lesson.stays')}</span></p>
      <button class="button quiet" @click=${() => takeBack(standing, reload)}>${t('page.lesson.takeBack')}</button></div>` : nothing}
    <div class="narrow"><bw-form class="announce" .label=${t('page.lesson.announceSend')} .send=${values => send(day, values, reload)} .fields=${html`
      <bw-field name="words" maxlength="200" .label=${t('page.lesson.words')} .hint=${t('page.lesson.wordsHint')}></bw-field>
      <bw-choices .legend=${t('page.lesson.howLong')} .value=${minutes} .options=${MINUTES.map(key => ({ key, label: lengthWords(key) }))}
        @chosen=${event => { minutes = event.detail; }}></bw-choices>`}></bw-form></div>
  </section>`;
}

const lengthWords = key => (key === '' ? t('page.lesson.untilTakenBack') : t('page.lesson.minutes', { minutes: Number(key) }));

async function send(day, { words }, reload) {
  await put(`/api/announcements/${freshId}`, { labDayId: day.id, words, minutes: minutes === '' ? null : Number(minutes) });
  freshId = newId();
  document.querySelector('bw-form.announce bw-field').value = '';
  await reload();
}

async function takeBack({ id }, reload) {
  await put(`/api/announcements/${id}/end`).catch(() => {}); // the reload shows what stands, or that nobody answers
  await reload();
}
