import { clock, plain } from '../core/format.js';
import { t } from '../core/texts.js';
import { html, nothing } from '../kit/kit.js';
import { standing } from './light-drift.js';
import './light-reading-form.js';

/** A reading older than this should be taken again: lamps warm up and clouds move. */
const STALE_MIN = 30;
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
  const minutes = Math.max(0, Math.round((Date.now() - Date.parse(acceptedAt)) / 60_000));
  const stale = minutes > STALE_MIN;
  return html`<div class="newest">
    <p class="figure">${reading.text} <span class="unit">${symbolOf(reading, catalogue)}</span></p>
    <p class="soft">${t('page.light.total', { irradiance: plain(Number(irradiance.value.toPrecision(3))) })}</p>
    <p><span class="tag ${stale ? 'unusual' : 'fine'}"><bw-icon name=${stale ? 'unusual' : 'fine'}></bw-icon>${ageOf(minutes)}</span></p>
  </div>`;
}

function ageOf(minutes) {
  if (minutes < 1) return t('page.light.justNow');
  const key = minutes > STALE_MIN ? 'page.light.stale' : 'page.light.age';
  return t(key, { minutes });
}

const symbolOf = (typed, { units }) => units.find(unit => unit.key === typed.unit)?.symbols[0] ?? '';

function history(station, catalogue) {
  return html`<details class="fold"><summary>${t('page.light.history', { count: station.readings.length })}</summary>
    <table><thead><tr><th scope="col">${t('page.light.time')}</th><th scope="col" class="number">${t('page.light.read')}</th>
      <th scope="col" class="number">${t('page.light.irradiance')}</th></tr></thead>
      <tbody>${[...station.readings].reverse().map(({ reading, totalIrradianceWm2: { value }, acceptedAt, replacedBy }) => html`
        <tr class=${replacedBy ? 'replaced' : nothing}><th scope="row">${clock(acceptedAt)}${replacedBy ? ` ${t('page.light.replaced')}` : ''}</th>
          <td class="number">${reading.text} ${symbolOf(reading, catalogue)}</td>
          <td class="number">${plain(Number(value.toPrecision(3)))}</td></tr>`)}</tbody></table></details>`;
}
