import { serverClock } from '../core/clock.js';
import { t } from '../core/texts.js';
import { html, nothing } from '../kit/kit.js';
import { ageOf } from './age.js';
import { standing } from './drift.js';
import { dyeLights } from './dyes.js';
import { evenness } from './evenness.js';
import './reading-form.js';
import { readings } from './readings.js';
import { settings } from './settings.js';
import { spectrum } from './spectrum.js';
import { threeDigits, typedParts } from './typed.js';

const TO_PLOT = 2;

/** One station: whether it must be read now, its newest light, its drift, a line to read it, and all readings so far. */
export function stationCard(station, page) {
  const valid = standing(station);
  return html`<section class="card flow">
    <div><h2>${station.name}</h2>${settings(station, page)}</div>
    ${valid.length === 0 ? html`<bw-notice tone="unusual" .text=${t('page.light.unread')}></bw-notice>` : newest(station, valid.at(-1), page)}
    ${valid.length >= TO_PLOT ? html`<figure><div class="plot"><canvas data-station=${station.id}></canvas></div>
      <figcaption class="soft small">${t('page.light.caption')}</figcaption></figure>` : nothing}
    ${page.mayRead ? html`<bw-reading-form .station=${station} .catalogue=${page.catalogue} @saved=${page.load}></bw-reading-form>` : nothing}
    <div>${station.readings.length > 0 ? readings(station, page) : nothing}${evenness(station, page)}${dyeLights(station)}${spectrum(station, page)}</div>
  </section>`;
}

function newest({ staleAfterMinutes }, { reading, totalIrradianceWm2: irradiance, readAt }, { catalogue }) {
  const { number, unit } = typedParts(reading, catalogue.units);
  const { tone, words } = ageOf(readAt, staleAfterMinutes, serverClock.now());
  return html`<div class="newest">
    <p class="state ${tone}"><bw-icon name=${tone}></bw-icon><span>${words}</span></p>
    <p class="figure">${number} <span class="unit">${unit}</span></p>
    <p class="soft">${t('page.light.total', { irradiance: threeDigits(irradiance.value) })}</p>
  </div>`;
}
