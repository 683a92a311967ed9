import { clock } from '../core/format.js';
import { t } from '../core/texts.js';
import { html, nothing } from '../kit/kit.js';
import './spectrum-form.js';
import { spectrumPlot } from './spectrum-plot.js';

/** The spectrum of a station's own lamp: its drawing, its story, and the way to give one or take it back. */
export function spectrum(station, page) {
  const latest = station.spectra.at(-1);
  const holds = Boolean(latest?.outline.length);
  if (!latest && !page.mayCorrect) return nothing;
  const key = `spectrum.${station.id}`;
  return html`<details class="fold" ?open=${page.changing === key}><summary>${holds ? t('page.light.spectrum.own', { name: latest.name }) : t('page.light.spectrum.none')}</summary>
    <div class="flow">
      <p class="small">${t(holds ? 'page.light.spectrum.holds' : 'page.light.spectrum.why', { lamp: t(`catalogue.lamp.${station.lamp}`) })}</p>
      ${holds ? spectrumPlot(latest.outline) : nothing}
      ${station.spectra.length ? html`<ul class="bare small soft">${station.spectra.map(({ name, teacher, at }) => html`<li>${clock(at)} ${teacher}: ${t('page.quoted', { words: name })}</li>`)}</ul>` : nothing}
      ${page.changing === key ? html`<bw-spectrum-form .station=${station} ?holds=${holds} @saved=${page.changed} @left=${page.leave}></bw-spectrum-form>`
        : page.mayCorrect ? html`<button class="button quiet" data-change=${key} @click=${() => page.change(key)}>${t(holds ? 'page.light.spectrum.change' : 'page.light.spectrum.give')}</button>` : nothing}
    </div></details>`;
}
