import { t } from '../core/texts.js';
import { html } from '../kit/kit.js';

/** The build parameters, grouped by the stage at which they are decided. */
export function parameterChoice(parameters, chosen, choose) {
  const stages = [...new Set(parameters.map(({ stage }) => stage))];
  return html`<div class="field"><label for="parameter">${t('page.findings.parameter')}</label>
    <select id="parameter" @change=${event => choose(event.target.value)}>${stages.map(stage => html`
      <optgroup label=${t(`catalogue.stage.${stage}`)}>${parameters.filter(each => each.stage === stage).map(({ key }) => html`
        <option value=${key} ?selected=${key === chosen}>${t(`catalogue.parameter.${key}`)}</option>`)}</optgroup>`)}
    </select></div>`;
}
