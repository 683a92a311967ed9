/** What can hurt at a step: one line each, the codes in a fold, and who decides: never this tool. */
import { t } from '../core/texts.js';
import { html, nothing } from '../kit/kit.js';
import { codesOf } from './hazards.js';

const ICONS = {
  glass: 'shard', powder: 'powder', heat: 'hot', flame: 'flame', corrosives: 'drop', flammables: 'flame',
  iodine: 'drop', plants: 'leaf', ultraviolet: 'light', lamps: 'light',
};

export const hazardNotes = hazards => html`<ul class="bare hazards">${hazards.map(note)}</ul>
  ${codesOf(hazards).length ? codes(hazards.filter(hazard => hazard.codes.length)) : nothing}`;

const note = ({ key, zone, adultPart }) => html`<li><bw-icon name=${ICONS[zone]}></bw-icon>
  <p><strong>${t(`catalogue.hazard.${key}`)}.</strong> ${t(`catalogue.hazardCaution.${key}`)}
    ${adultPart ? html`<span class="adult"><bw-icon name="adult"></bw-icon>${t(`catalogue.hazardAdult.${key}`)}</span>` : nothing}</p></li>`;

const codes = hazards => html`<details class="fold codes"><summary>${t('page.safety.codes')}</summary>
  <p class="small">${t('page.safety.codesLead')}</p>
  ${hazards.map(hazard => html`<h3>${t(`catalogue.hazard.${hazard.key}`)}</h3>
    <ul class="bare small">${hazard.codes.map(codeLine)}${hazard.strengths.map(strengthLine)}${figures(hazard)}</ul>`)}</details>`;

const codeLine = code => html`<li><strong>${code}</strong> ${t(`catalogue.hazardCode.${code}`)}</li>`;

const strengthLine = ({ fromMassPercent, fromMolPerL, codes: those }) => html`<li>${t('page.safety.fromStrength', {
  percent: fromMassPercent, mol: fromMolPerL, codes: those.join(', '),
})}</li>`;

const figures = ({ flashPointC, selfIgnitionC }) => html`
  ${flashPointC == null ? nothing : html`<li>${t('page.safety.flashPoint', { degC: flashPointC })}</li>`}
  ${selfIgnitionC == null ? nothing : html`<li>${t('page.safety.selfIgnition', { degC: selfIgnitionC })}</li>`}`;
