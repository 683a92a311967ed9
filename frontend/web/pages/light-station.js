import { clock, day, plain } from '../core/format.js';
import { t } from '../core/texts.js';
import { html, nothing } from '../kit/kit.js';
import { standing } from './light-drift.js';
import './light-reading-form.js';
import { typedParts } from './light-typed.js';

/** A reading older than this should be taken again: lamps warm up and clouds move. */
const STALE_MIN = 30;
const SAME_DAY_MIN = 12 * 60;
const TO_PLOT = 2;

/** One station: what it is, its newest light and how old that is, its drift, and a line to read it again. */
export function stationCard(station, { catalogue, mayWrite, load }) {
  const readings = standing(station);
  return html`<section class="card flow">
    <div><h2>${station.name}</h2><p class="soft">${setUpOf(station)}</p></div>
    ${readings.length === 0 ? html`<bw-notice tone="unusual" .text=${t('page.light.unread')}></bw-notice>` : newest(readings.at(-1), catalogue)}
    ${readings.length >= TO_PLOT ? html`<figure><div class="plot"><canvas data-station=${station.id}></canvas></div>
      <figcaption class="soft small">${t('page.light.caption')}</figcaption></figure>` : nothing}
    ${mayWrite ? html`<bw-reading-form .station=${station} .catalogue=${catalogue} @saved=${load}></bw-reading-form>` : nothing}
    ${readings.length > 0 ? history(station, catalogue) : nothing}
  </section>`;
}

function setUpOf({ lamp, instrument, distanceM, angleDeg }) {
  const distance = distanceM == null ? [] : [t('page.light.atDistance', { distance: plain(distanceM * 100) })];
  const angle = !angleDeg ? [] : [t('page.light.atAngle', { angle: plain(angleDeg) })];
  return [t(`catalogue.lamp.${lamp}`), t(`catalogue.instrument.${instrument}`), ...distance, ...angle].join(' · ');
}

function newest({ reading, totalIrradianceWm2: irradiance, acceptedAt }, catalogue) {
  const { number, unit } = typedParts(reading, catalogue.units);
  const { stale, words } = ageOf(acceptedAt, Date.now());
  const tone = stale ? 'unusual' : 'fine';
  return html`<div class="newest">
    <p class="figure">${number} <span class="unit">${unit}</span></p>
    <p class="soft">${t('page.light.total', { irradiance: threeDigits(irradiance.value) })}</p>
    <p><span class="tag ${tone}"><bw-icon name=${tone}></bw-icon>${words}</span></p>
  </div>`;
}

/** How old a reading is, and whether that is too old. */
function ageOf(acceptedAt, now) {
  const minutes = Math.max(0, Math.round((now - Date.parse(acceptedAt)) / 60_000));
  if (minutes < 1) return { stale: false, words: t('page.light.justNow') };
  if (minutes <= STALE_MIN) return { stale: false, words: t('page.light.age', { minutes }) };
  if (minutes <= SAME_DAY_MIN) return { stale: true, words: t('page.light.stale', { minutes }) };
  return { stale: true, words: t('page.light.old', { day: day(acceptedAt.slice(0, 10)) }) };
}

const threeDigits = value => plain(Number(value.toPrecision(3)));

function history(station, catalogue) {
  return html`<details class="fold"><summary>${t('page.light.history', { count: station.readings.length })}</summary>
    <table><thead><tr><th scope="col">${t('page.light.time')}</th><th scope="col" class="number">${t('page.light.read')}</th>
      <th scope="col" class="number">${t('page.light.irradiance')}</th></tr></thead>
      <tbody>${[...station.readings].reverse().map(({ reading, totalIrradianceWm2: { value }, acceptedAt, replacedBy }) => html`
        <tr class=${replacedBy ? 'replaced' : nothing}><th scope="row">${clock(acceptedAt)}${replacedBy ? ` ${t('page.light.replaced')}` : ''}</th>
          <td class="number">${Object.values(typedParts(reading, catalogue.units)).join(' ')}</td>
          <td class="number">${threeDigits(value)}</td></tr>`)}</tbody></table></details>`;
}
