import { clock, plain } from '../core/format.js';
import { t } from '../core/texts.js';
import { html, nothing } from '../kit/kit.js';
import './settings-form.js';
import { typedText } from './typed.js';

/** How a station is set up in one line. */
export function setUpOf({ lamp, instrument, distanceM, angleDeg }) {
  const distance = distanceM == null ? [] : [t('page.light.atDistance', { distance: plain(distanceM * 100) })];
  const angle = !angleDeg ? [] : [t('page.light.atAngle', { angle: plain(angleDeg) })];
  return [t(`catalogue.lamp.${lamp}`), t(`catalogue.instrument.${instrument}`), ...distance, ...angle].join(' · ');
}

/** The line, the way to correct it, and what it was before. */
export function settings(station, page) {
  const key = `settings.${station.id}`;
  return html`<div><p class="soft">${setUpOf(station)}</p>
    ${page.mayCorrect && page.changing !== key ? html`<button class="button plain small" data-change=${key} @click=${() => page.change(key)}
      aria-label=${t('page.light.correctSettingsOf', { name: station.name })}>${t('page.light.correctSettings')}</button>` : nothing}
    ${page.changing === key ? html`<bw-settings-form .station=${station} .catalogue=${page.catalogue} @saved=${page.changed} @left=${page.leave}></bw-settings-form>` : nothing}
    ${station.settings.length > 1 ? earlier(station, page.catalogue.units) : nothing}</div>`;
}

function earlier({ settings: all }, units) {
  return html`<details class="fold"><summary>${t('page.light.settingsEarlier', { count: all.length - 1 })}</summary>
    <ul class="bare small">${all.slice(1).map((now, i) => html`<li><span class="replaced">${words(all[i], units)}</span><br>
      ${t('page.light.settingsBecame', { time: clock(now.at), teacher: now.teacher })} ${t('page.quoted', { words: now.reason })}</li>`)}</ul></details>`;
}

const words = ({ name, lamp, instrument, distance, angle }, units) =>
  [name, t(`catalogue.lamp.${lamp}`), t(`catalogue.instrument.${instrument}`), ...[distance, angle].filter(Boolean).map(typed => typedText(typed, units))].join(' · ');
