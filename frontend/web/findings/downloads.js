import { t } from '../core/texts.js';
import { MICROWATT_PER_CM2 } from '../core/units.js';
import { html } from '../kit/kit.js';
import { dotsOf } from './plot.js';

/** The figure as a picture and as data. */
export function downloads(one, cells) {
  return html`<p class="downloads">
    <button type="button" class="button quiet" @click=${() => savePicture(one.parameter)}>${t('page.findings.savePicture')}</button>
    <button type="button" class="button quiet" @click=${() => saveData(one, cells)}>${t('page.findings.saveData')}</button></p>`;
}

/** On the colour that the page has, since a canvas has none. */
function savePicture(name) {
  const drawn = document.querySelector('.findings canvas');
  const picture = Object.assign(document.createElement('canvas'), { width: drawn.width, height: drawn.height });
  const ink = picture.getContext('2d');
  ink.fillStyle = getComputedStyle(drawn.closest('figure')).backgroundColor;
  ink.fillRect(0, 0, picture.width, picture.height);
  ink.drawImage(drawn, 0, 0);
  picture.toBlob(blob => save(blob, `${name}.png`));
}

function saveData(one, cells) {
  save(new Blob([tableOf(one, cells)], { type: 'text/csv' }), `${one.parameter}.csv`);
}

/** RFC 4180: one row for each cell, numbers with a point whatever the language. */
export function tableOf(one, cells) {
  const head = ['cell', 'team', one.parameter, 'standing', 'failed_stage', 'power_density_uW_cm2', 'low_95', 'high_95'];
  const rows = dotsOf(one.parameter, cells).map(dot => [dot.label, dot.team, dot.level, dot.standing, dot.failedStage ?? '', ...powers(dot)]);
  return [head, ...rows].map(row => `${row.map(quoted).join(',')}\r\n`).join('');
}

const powers = ({ powerDensityWm2: power }) => (power ? [power.value, power.low, power.high].map(watts => watts / MICROWATT_PER_CM2) : ['', '', '']);

/** A text that begins like a formula is told to be none. */
function quoted(value) {
  const text = typeof value === 'string' ? value.replace(/^([=+\-@\t\r])(?![\d.])/, "'$1") : String(value);
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

function save(blob, name) {
  const address = URL.createObjectURL(blob);
  Object.assign(document.createElement('a'), { href: address, download: name }).click();
  setTimeout(() => URL.revokeObjectURL(address), 1000);
}
