import { clock } from '../core/format.js';
import { t } from '../core/texts.js';
import { html, nothing } from '../kit/kit.js';
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
  if (replacedBy) {
    return html`<li class="soft"><span>${clock(readAt)}</span><span class="replaced">${typed}</span><span>${t('page.light.replaced')}</span></li>`;
  }
  const open = page.correcting === id;
  return html`<li><span>${clock(readAt)}</span><span class="read"><strong>${typed}</strong> <span class="soft">${threeDigits(value)} W/m²</span></span>
    ${page.mayRead && !open ? html`<button class="button plain" data-reading=${id} @click=${() => page.correct(id)}
      aria-label=${t('page.light.correctThis', { reading: typed, time: clock(readAt) })}>${t('page.light.correct')}</button>` : nothing}
    ${leaning(page.uses.get(id))}
    ${open ? html`<bw-light-correction class="whole" .station=${station} .reading=${reading} .catalogue=${page.catalogue}
      @saved=${page.corrected} @left=${page.leaveCorrection}></bw-light-correction>` : nothing}</li>`;
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
