/** The afternoon as a chart: heaters, stations and teams as lines, what happens there as bars along the time. */
import { t } from '../core/texts.js';
import { html, svg } from '../kit/kit.js';
import { hours, teamName } from './names.js';

const LONGEST_NAME = 32;
const LETTER = 8.2;
const WIDTH = 1000;
const LINE = 30;
const TOP = 26;
const STEP_MIN = 30;

export function timetable({ timetable: { slots, endMin, minutes }, settings, cells }) {
  const lines = linesOf(slots, settings, cells);
  const until = Math.max(endMin, minutes, 60);
  const left = 14 + LETTER * Math.max(8, ...lines.map(({ name }) => name.length));
  const x = minute => left + (WIDTH - left - 24) * minute / until;
  const height = TOP + LINE * lines.length + 4;
  return html`<section class="flow afternoon" aria-labelledby="afternoon"><h2 id="afternoon">${t('page.plan.afternoon')}</h2>
    <div class="scroll" tabindex="0" role="region" aria-label=${t('page.plan.tableOf', { what: t('page.plan.afternoon') })}>
      <svg class="afternoon" viewBox="0 0 ${WIDTH} ${height}" role="img" aria-label=${t('page.plan.afternoonAlt', { end: hours(endMin), lines: lines.length })}>
        ${ticks(until).map(minute => svg`<line class="tick-line" x1=${x(minute)} x2=${x(minute)} y1=${TOP - 6} y2=${height}></line>
          <text class="time" x=${x(minute)} y="14" text-anchor="middle">${hours(minute)}</text>`)}
        ${lines.map((line, i) => svg`<text class="lane" x="0" y=${TOP + LINE * i + 19}>${line.name}</text>
          ${line.slots.map(slot => bar(slot, x, TOP + LINE * i))}`)}
        <line class="closing" x1=${x(minutes)} x2=${x(minutes)} y1=${TOP - 10} y2=${height}></line>
      </svg></div>
    <ul class="bare key">${['film', 'counterElectrode', 'bake', 'dyeAndClose', 'measure'].map(kind => html`<li><svg viewBox="0 0 14 14" width="14" height="14" aria-hidden="true"><rect class="bar ${kind}" width="14" height="14"></rect></svg>${t(`page.plan.slot.${kind}`)}</li>`)}
      <li><svg viewBox="0 0 14 14" width="14" height="14" aria-hidden="true"><line class="closing" x1="7" x2="7" y1="0" y2="14"></line></svg>${t('page.plan.closing')}</li></ul>
    <details class="fold"><summary>${t('page.plan.batches')}</summary><div>${batches(slots, settings)}</div></details></section>`;
}

function linesOf(slots, settings, cells) {
  const of = (kinds, place) => slots.filter(slot => kinds.includes(slot.kind) && slot.place === place);
  const teams = [...new Set(slots.filter(({ kind }) => kind === 'film').map(({ place }) => place))].sort((a, b) => (a || 99) - (b || 99));
  return [
    ...settings.heaters.map(({ name }, i) => ({ name: short(t('page.plan.heaterName', { name })), slots: of(['bake'], i + 1) })),
    ...Array.from({ length: settings.stations }, (_, i) => ({ name: t('page.plan.stationName', { number: i + 1 }), slots: of(['measure'], i + 1) })),
    ...teams.map(team => ({ name: short(teamName(team, cells)), slots: of(['film', 'counterElectrode', 'dyeAndClose'], team) })),
  ];
}

const short = name => (name.length > LONGEST_NAME ? `${name.slice(0, LONGEST_NAME - 1)}…` : name);

const ticks = until => Array.from({ length: Math.floor(until / STEP_MIN) + 1 }, (_, i) => i * STEP_MIN);

function bar({ kind, cells, fromMin, toMin, bakeC }, x, y) {
  const width = Math.max(2, x(toMin) - x(fromMin) - 1);
  const words = kind === 'bake' ? `${Math.round(bakeC)} °C · ${cells.length}` : cells.join(' ');
  return svg`<g><title>${t(`page.plan.slot.${kind}`)}, ${hours(fromMin)}–${hours(toMin)}: ${cells.join(', ')}</title>
    <rect class="bar ${kind}" x=${x(fromMin)} y=${y + 2} width=${width} height=${LINE - 6} rx="2"></rect>
    <text class="in" x=${x(fromMin) + 5} y=${y + 19}>${width > words.length * 7.2 + 6 ? words : ''}</text></g>`;
}

function batches(slots, { heaters }) {
  return html`<table><thead><tr><th>${t('page.plan.heater')}</th><th>${t('page.plan.when')}</th><th>°C</th><th>${t('page.plan.onIt')}</th></tr></thead>
    <tbody>${slots.filter(({ kind }) => kind === 'bake').map(slot => html`<tr><td>${heaters[slot.place - 1].name}</td><td>${hours(slot.fromMin)}–${hours(slot.toMin)}</td>
      <td>${Math.round(slot.bakeC)}</td><td>${slot.cells.map((cell, i) => `${i + 1} ${cell}`).join(' · ')}</td></tr>`)}</tbody></table>`;
}
