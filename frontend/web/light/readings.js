import { setAsideReason } from '../bench/words.js';
import { clock } from '../core/format.js';
import { t } from '../core/texts.js';
import { html, nothing } from '../kit/kit.js';
import { asideForm } from './aside.js';
import './correction.js';
import { byTime } from './drift.js';
import { threeDigits, typedText } from './typed.js';

/** All readings of a station, newest first: what was read, which cells lean on it, and a way to correct it. */
export function readings(station, page) {
  return html`<details class="fold"><summary>${t('page.light.history', { count: station.readings.length })}</summary>
    <ol class="bare readings">${byTime(station.readings).reverse().map(reading => row(station, reading, page))}</ol></details>`;
}

function row(station, reading, page) {
  const { id, readAt, replacedBy, totalIrradianceWm2: { value } } = reading;
  const typed = typedText(reading.reading, page.catalogue.units);
  const aside = setAsideReason(reading);
  if (replacedBy) {
    return html`<li class="soft"><span>${clock(readAt)}</span><span class="replaced">${typed}</span><span>${t('page.light.replaced')}</span></li>`;
  }
  return html`<li><span>${clock(readAt)}</span>
    ${aside === null ? html`<span class="read"><strong>${typed}</strong> <span class="soft">${threeDigits(value)} W/m²</span></span>`
      : html`<span><span class="replaced">${typed}</span> <span class="tag unusual">${t('page.desk.setAside')}</span></span>`}
    ${aside === null ? leaning(page.uses.get(id)) : nothing}
    ${reading.setAside.length ? html`<ul class="bare small soft whole">${reading.setAside.map(each => html`<li>${clock(each.at)} ${each.teacher}:
      ${each.reason ? t('page.desk.setAsideWhy', { reason: each.reason }) : t('page.desk.takenBack')}</li>`)}</ul>` : nothing}
    ${acts(station, reading, page, { reading: typed, time: clock(readAt) })}</li>`;
}

/** What a teacher may do about a reading, or the form of what was begun. */
function acts(station, reading, page, about) {
  const [correct, aside] = [`correct.${reading.id}`, `aside.${reading.id}`];
  if (page.changing === correct) {
    return html`<bw-light-correction class="whole" .station=${station} .reading=${reading} .catalogue=${page.catalogue}
      @saved=${page.changed} @left=${page.leave}></bw-light-correction>`;
  }
  if (page.changing === aside) return asideForm(reading, page);
  if (!page.mayCorrect) return nothing;
  const back = setAsideReason(reading) !== null;
  return html`<span class="acts whole">
    ${back ? nothing : html`<button class="button plain" data-change=${correct} @click=${() => page.change(correct)}
      aria-label=${t('page.light.correctThis', about)}>${t('page.light.correct')}</button>`}
    <button class="button plain" data-change=${aside} @click=${() => page.change(aside)}
      aria-label=${t(back ? 'page.light.takeBackThis' : 'page.light.setAsideThis', about)}>${t(back ? 'page.desk.takeBackReading' : 'page.desk.setAsideDo')}</button></span>`;
}

/** Who would move with this reading. */
function leaning(cells) {
  if (!cells) return nothing;
  const words = cells.length === 0 ? t('page.light.nobodyLeans')
    : t(cells.length === 1 ? 'page.light.oneLeans' : 'page.light.lean', { count: cells.length, cells: byTeam(cells) });
  return html`<p class="small soft whole">${words}</p>`;
}

/** "Hawthorn H1, H2; Larch L1". */
export function byTeam(cells) {
  const teams = new Map();
  for (const { team, label } of cells) teams.set(team, [...(teams.get(team) ?? []), label]);
  return [...teams].map(([team, labels]) => `${team} ${labels.join(', ')}`).join('; ');
}
