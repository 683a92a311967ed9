import { clock, plain, prefixed } from '../core/format.js';
import { put } from '../core/http.js';
import { t } from '../core/texts.js';
import { html, nothing } from '../kit/kit.js';

/** The control cell: which it is, its course at each station, and whether it tells the same as the light meters. */
export function controlCell({ control, cells, mayCorrect, labDayId, load }) {
  if (!control.cellId && !mayCorrect) return nothing;
  return html`<section class="card flow control"><h2>${control.cellId ? t('page.light.control.is', { label: control.label }) : t('page.light.control.title')}</h2>
    <p class="soft">${t('page.light.control.lead')}</p>
    ${control.checks.length > 0 ? html`<ul class="bare flow">${control.checks.map(check)}</ul>` : nothing}
    ${control.cellId && control.stations.length < 2 ? html`<p>${t('page.light.control.more')}</p>` : nothing}
    ${control.stations.length > 0 ? html`<div class="courses">${control.stations.map(course)}</div>` : nothing}
    ${mayCorrect ? picker(control, cells, labDayId, load) : nothing}</section>`;
}

function check({ one, other, lightRatio, currentRatio, agrees }) {
  const words = { one, other, light: plain(round(lightRatio.value)), current: plain(round(currentRatio.value)) };
  return html`<li><bw-notice tone=${agrees ? 'fine' : 'unusual'}
    .text=${t(agrees ? 'page.light.control.agrees' : 'page.light.control.differs', words)}></bw-notice></li>`;
}

const round = value => Number(value.toPrecision(2));

function course({ station, readings, driftPerHour }) {
  return html`<div><h3>${station}</h3>
    ${driftPerHour ? html`<p class="small soft">${t('page.light.control.drift', { percent: plain(round(100 * driftPerHour.value)) })}</p>` : nothing}
    <table><caption class="unseen">${t('page.light.control.caption', { station })}</caption>
      <thead><tr><th scope="col">${t('page.light.control.time')}</th><th scope="col" class="number">${t('page.light.control.current')}</th>
        <th scope="col" class="number">${t('page.light.control.light')}</th></tr></thead>
      <tbody>${readings.map(({ at, photocurrentA, effectiveIrradianceWm2 }) => html`<tr><td>${clock(at)}</td>
        <td class="number">${prefixed(photocurrentA.value, 'A')}</td>
        <td class="number">${prefixed(effectiveIrradianceWm2.value, 'W/m²')}</td></tr>`)}</tbody></table></div>`;
}

function picker(control, cells, labDayId, load) {
  const choose = async event => {
    await put(`/api/labdays/${labDayId}/control-cell`, { cellId: event.target.value || null });
    load();
  };
  return html`<div class="field"><label for="control-cell">${t('page.light.control.choose')}</label>
    <select id="control-cell" .value=${control.cellId ?? ''} @change=${choose}>
      <option value="">${t('page.light.control.none')}</option>
      ${cells.map(({ id, label }) => html`<option value=${id} ?selected=${id === control.cellId}>${label}</option>`)}</select></div>`;
}
