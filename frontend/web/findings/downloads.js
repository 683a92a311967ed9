import { t } from '../core/texts.js';
import { html, nothing } from '../kit/kit.js';
import { dotsOf } from './plot.js';

/**
 * A figure as a picture and as data: `name` of the files, `title` over the picture, `data` the table as text; without `picture`
 * only the data.
 */
export const downloads = ({ name, title, data, picture = true }) => html`<p class="downloads">
    ${picture ? html`<button type="button" class="button quiet" @click=${event => savePicture(event.target, name, title)}>${t('page.findings.savePicture')}</button>` : nothing}
    <button type="button" class="button quiet" @click=${() => save(new Blob([data()], { type: 'text/csv' }), `${name}.csv`)}>${t('page.findings.saveData')}</button></p>`;

/** On the colour that the page has, since a canvas has none, and with what it shows above it. */
function savePicture(button, name, title) {
  const figure = button.closest('figure');
  const drawn = figure.querySelector('canvas');
  const style = getComputedStyle(figure);
  const size = parseFloat(style.fontSize) * (drawn.width / drawn.clientWidth);
  const picture = Object.assign(document.createElement('canvas'), { width: drawn.width, height: drawn.height + Math.round(size * 2.6) });
  const ink = picture.getContext('2d');
  ink.fillStyle = style.backgroundColor;
  ink.fillRect(0, 0, picture.width, picture.height);
  ink.fillStyle = style.color;
  ink.font = `650 ${size}px ${style.fontFamily}`;
  ink.fillText(title, size * 0.6, size * 1.6, picture.width - size * 1.2);
  ink.drawImage(drawn, 0, picture.height - drawn.height);
  picture.toBlob(blob => save(blob, `${name}.png`));
}

/** One row for each cell. */
export function tableOf(one, cells, { measure: { scale, column } }) {
  const head = ['cell', 'team', 'day', one.parameter, 'standing', 'failed_stage', column, 'low_95', 'high_95'];
  return csv(head, dotsOf(one.parameter, cells).map(dot =>
    [dot.label, dot.team, dot.day, dot.level, dot.standing, dot.failedStage ?? '', ...figures(dot, scale)]));
}

/** Level by level. */
export function levelsOf(one, { measure: { scale, column } }) {
  const shown = value => (value == null ? '' : value / scale);
  return csv([one.parameter, 'made', 'count', 'broke', `median_${column}`, 'low_95', 'high_95', 'came_through', 'came_low_95', 'came_high_95'],
    one.levels.map(({ level, made, n, failed, median, interval, came, cameInterval }) =>
      [level, made, n, failed, shown(median), shown(interval?.low), shown(interval?.high), came ?? '', cameInterval?.low ?? '', cameInterval?.high ?? '']));
}

/** All parameters in one model. */
export const jointOf = ({ terms }, { measure: { scale, column } }) => csv(['parameter', 'level', `mean_${column}`, 'low_95', 'high_95', 'f', 'df_between', 'df_within', 'p', 'p_corrected'],
  terms.flatMap(term => term.means.map(({ level, value, interval }) =>
    [term.parameter, level, value / scale, interval.low / scale, interval.high / scale, term.f, term.dfBetween, term.dfWithin, term.p, term.holm])));

/** Every two parameters. */
export const pairsOf = pairs => csv(['first', 'second', 'cramers_v', 'differences_of_first_told', 'differences_of_second_told'],
  pairs.map(({ first, second, cramersV, firstTold, secondTold }) => [first, second, cramersV, firstTold, secondTold]));

/** Every point of every curve. */
export const curvesOf = (curves, parameter) => csv(['cell', parameter, 'voltage_V', 'current_density_mA_cm2'],
  curves.flatMap(({ label, level, points }) => points.map(({ x, y }) => [label, level, x / 1000, y / 1000])));

const figures = ({ figure }, scale) => (figure ? [figure.value, figure.low, figure.high].map(value => value / scale) : ['', '', '']);

/** RFC 4180, numbers with a point whatever the language. */
const csv = (head, rows) => [head, ...rows].map(row => `${row.map(quoted).join(',')}\r\n`).join('');

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
