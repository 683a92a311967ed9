import { figureTexts, plain } from '../core/format.js';
import { t } from '../core/texts.js';
import { html } from '../kit/kit.js';
import { dotsOf } from './plot.js';

/** The same cells as in the picture, as a table. */
export function cellTable(one, cells, words) {
  const dots = dotsOf(one.parameter, cells);
  return html`<details class="fold"><summary>${t('page.findings.cells', { count: dots.length })}</summary>
    <div class="scroll" tabindex="0" role="region" aria-label=${t('page.findings.cells', { count: dots.length })}><table>
      <thead><tr>
        <th scope="col">${t('page.findings.cell')}</th><th scope="col">${t('page.findings.team')}</th>
        <th scope="col">${words.parameter(one.parameter)}</th>
        <th scope="col" class="number">${words.measure.title}</th><th scope="col" class="number">${t('page.findings.interval')}</th>
      </tr></thead>
      <tbody>${dots.map(dot => row(dot, one.parameter, words))}</tbody>
    </table></div></details>`;
}

function row(dot, parameter, words) {
  const { figure } = dot;
  const sure = figure?.standardUncertainty > 0;
  const texts = figure && sure ? figureTexts(figure, words.measure.scale, '') : null;
  return html`<tr><th scope="row">${dot.label}</th>
    <td><bw-mark .mark=${dot.mark}></bw-mark> ${dot.team}</td>
    <td>${words.level(parameter, dot.level)}</td>
    <td class="number">${texts?.value ?? (figure ? plain(figure.value / words.measure.scale) : outcome(dot))}</td>
    <td class="number">${texts ? `${texts.low} – ${texts.high}` : ''}</td></tr>`;
}

function outcome({ standing, failedStage }) {
  if (standing === 'waiting') return t('page.findings.waits');
  return failedStage ? t('page.findings.failedAt', { stage: t(`catalogue.stage.${failedStage}`) }) : t('page.findings.failed');
}
