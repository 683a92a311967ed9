/** Where the cell lay: the day's light stations, the last one remembered. */
import { clock } from '../core/format.js';
import { remember, remembered } from '../core/drafts.js';
import { t } from '../core/texts.js';
import { html } from '../kit/kit.js';
import { setAsideReason } from './words.js';

const LAST = 'station';

/** The station to offer first: the last one used, or the only one there is. */
export function likelyStation(stations) {
  const only = stations.length === 1 ? stations[0] : null;
  return (stations.find(each => each.id === remembered(LAST, null)) ?? only)?.id ?? '';
}

export function stationPicker(stations, value, change) {
  if (stations.length === 0) return html`<bw-notice tone="unusual" .text=${t('page.bench.noStations')}></bw-notice>`;
  return html`<bw-choices tall name="stationId" .legend=${t('page.bench.station')} .value=${value}
    .options=${stations.map(station => ({ key: station.id, label: stationWords(station) }))}
    @chosen=${event => choose(event.detail, change)}></bw-choices>`;
}

function choose(id, change) {
  remember(LAST, id);
  change(id);
}

function stationWords({ name, lamp, readings }) {
  const latest = readings.filter(each => !each.replacedBy && !setAsideReason(each)).sort((one, other) => Date.parse(one.readAt) - Date.parse(other.readAt)).at(-1);
  const light = latest ? t('page.bench.lightAt', { time: clock(latest.readAt) }) : t('page.bench.lightMissing');
  return html`<span class="place-words"><strong>${name}</strong><span class="soft small">${t(`catalogue.lamp.${lamp}`)} · ${light}</span></span>`;
}
