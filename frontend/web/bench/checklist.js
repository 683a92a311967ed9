/** What a cell needs before it counts, each point ticked or with the way to its form. */
import { t } from '../core/texts.js';
import { html, nothing } from '../kit/kit.js';
import { to } from './routes.js';

/** Server's remark that a station has no light reading: nothing that a team can do but ask. */
const NO_LIGHT = 'standing.stationDark';

export function checklist(cell, readings, result) {
  const points = pointsOf(cell, readings, result);
  if (points.every(({ done }) => done)) return nothing;
  return html`<section class="flow" aria-labelledby="checklist"><h2 id="checklist">${t('page.bench.checklist')}</h2>
    <ul class="bare checks">${points.map(row)}</ul></section>`;
}

/** [{key, done, href}]; a point without `href` is the teacher's. */
export function pointsOf(cell, readings, result) {
  const has = kinds => readings.some(({ kind }) => kinds.includes(kind));
  const lit = has(['light', 'sweep']);
  return [
    { key: 'area', done: Boolean(cell.area), href: to('sheet', cell.id) },
    { key: 'dark', done: has(['dark']), href: to('dark', cell.id) },
    { key: 'light', done: lit, href: to('light', cell.id) },
    { key: 'station', done: lit && !(result?.missing ?? []).some(({ key }) => key === NO_LIGHT), href: null },
  ];
}

const row = ({ key, done, href }) => html`<li class=${done ? 'done' : ''}><bw-icon name=${done ? 'fine' : 'waiting'}
    .label=${t(done ? 'page.bench.check.done' : 'page.bench.check.open')}></bw-icon>
  ${done || !href ? html`<span>${t(`page.bench.check.${key}`)}</span>` : html`<a href=${href}>${t(`page.bench.check.${key}`)}</a>`}</li>`;
