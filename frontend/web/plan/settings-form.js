/** What a plan is asked for: what to compare, what stays the same, who, with what, in which time. */
import { t } from '../core/texts.js';
import { PageElement, html, nothing } from '../kit/kit.js';
import { comparableParameters, openParameters, withFactor, withFixed, withLevel, withoutLevel } from './draft.js';
import './level-picker.js';
import { hours, levelWords, parameterName, ratio } from './names.js';

const RATIOS = [1.5, 2, 3, 5];
const SPREADS = [1.3, 1.65, 2.5];
const FIRST = ['dyeSource', 'bakeTemperature', 'soakTime', 'counterElectrode', 'tapeLayers', 'oxideSource'];

/** `draft` as in draft.js; `saved` once there is a plan. Fires `changed` with the new draft and `deal`. */
class PlanForm extends PageElement {
  static properties = {
    draft: { attribute: false }, catalogue: { attribute: false }, saved: { type: Boolean }, byHand: { type: Boolean },
    busy: { type: Boolean }, trouble: {}, adding: { state: true }, fixing: { state: true }, ownName: { state: true }, rule: { state: true },
  };

  constructor() {
    super();
    this.rule = ['', ''];
  }

  render() {
    return html`<form class="flow" novalidate @submit=${this.#submit}>
      ${this.#compare()}${this.#people()}${this.#same()}${this.#never()}${this.#room()}${this.#answer()}
      <div role="alert">${this.trouble ? html`<bw-notice tone="impossible" .text=${this.trouble}></bw-notice>` : nothing}</div>
      ${this.byHand ? html`<p class="small soft">${t('page.plan.byHandLost')}</p>` : nothing}
      <button class="button whole" aria-busy=${this.busy ? 'true' : nothing}>${t(this.saved ? 'page.plan.dealAgain' : 'page.plan.deal')}</button>
    </form>`;
  }

  #compare() {
    const { draft, catalogue } = this;
    const open = comparableParameters(draft, catalogue);
    const ordered = [...FIRST.map(key => open.find(each => each.key === key)).filter(Boolean), ...open.filter(({ key }) => !FIRST.includes(key))];
    return html`<section class="flow"><h2>${t('page.plan.compare')}</h2><p class="soft small">${t('page.plan.compareLead')}</p>
      ${draft.factors.map(factor => this.#factor(factor))}
      <bw-picker .label=${t('page.plan.compareAdd')} .none=${t('page.plan.choose')} .value=${''}
        .options=${[...ordered.map(({ key }) => ({ key, label: parameterName(key) })), { key: '+', label: t('page.plan.own') }]}
        @chosen=${this.#addFactor}></bw-picker>
      ${this.ownName === undefined ? nothing : html`<div class="adder"><bw-field .label=${t('page.plan.ownName')} maxlength="24" .value=${this.ownName}
          @typed=${event => { this.ownName = event.detail; }}></bw-field>
        <button type="button" class="button quiet" @click=${this.#addOwn}>${t('page.plan.add')}</button></div>`}</section>`;
  }

  #factor({ parameter, levels }) {
    const values = levels.map(level => ({ parameter, ...level }));
    return html`<fieldset class="varied flow"><legend>${parameterName(parameter)}</legend>
      ${levels.length ? html`<ul class="bare levels">${values.map((value, place) => html`<li class="level">${levelWords(value, this.catalogue)}
        <button type="button" class="drop" aria-label=${t('page.plan.drop', { what: levelWords(value, this.catalogue) })}
          @click=${() => this.#change(withoutLevel(this.draft, parameter, place))}>×</button></li>`)}</ul>` : nothing}
      <bw-level-picker .parameter=${parameter} .catalogue=${this.catalogue} .taken=${levels} .label=${t(levels.length ? 'page.plan.levelMore' : 'page.plan.levelFirst')}
        @picked=${event => this.#change(withLevel(this.draft, parameter, event.detail))}></bw-level-picker>
      ${levels.length ? nothing : html`<button type="button" class="button plain" @click=${() => this.#set('factors', this.draft.factors.filter(each => each.parameter !== parameter))}>${t('page.plan.dropFactor')}</button>`}
    </fieldset>`;
  }

  #people() {
    return html`<section class="flow"><h2>${t('page.plan.who')}</h2>
      <div class="pair">${this.#count('teams', t('page.plan.teams'))}${this.#count('cellsPerTeam', t('page.plan.cellsPerTeam'))}</div>
      ${this.#tick('standardCell', t('page.plan.standard'))}${this.#tick('undyedControl', t('page.plan.undyed'))}</section>`;
  }

  #same() {
    const { draft, catalogue } = this;
    return this.#fold('same', t('page.plan.same', { count: draft.fixed.length }), html`
      <ul class="bare levels">${draft.fixed.map(value => html`<li class="level">${parameterName(value.parameter)}: ${levelWords(value, catalogue)}
        <button type="button" class="drop" aria-label=${t('page.plan.drop', { what: parameterName(value.parameter) })}
          @click=${() => this.#set('fixed', draft.fixed.filter(each => each !== value))}>×</button></li>`)}</ul>
      <bw-picker .label=${t('page.plan.sameAdd')} .none=${t('page.plan.choose')} .value=${this.fixing ?? ''}
        .options=${openParameters(draft, catalogue).map(({ key }) => ({ key, label: parameterName(key) }))} @chosen=${event => { this.fixing = event.detail; }}></bw-picker>
      ${this.fixing ? html`<bw-level-picker .parameter=${this.fixing} .catalogue=${catalogue} .label=${parameterName(this.fixing)} @picked=${this.#fix}></bw-level-picker>` : nothing}`);
  }

  #never() {
    const { draft, catalogue } = this;
    const levels = draft.factors.flatMap(({ parameter, levels: own }) => own.map(level => ({ parameter, ...level })));
    const options = levels.map((value, i) => ({ key: String(i), label: `${parameterName(value.parameter)}: ${levelWords(value, catalogue)}` }));
    return this.#fold('never', t('page.plan.never', { count: draft.forbidden.length }), html`
      <ul class="bare levels">${draft.forbidden.map(rule => html`<li class="level">${rule.levels.map(value => levelWords(value, catalogue)).join(' + ')}
        <button type="button" class="drop" aria-label=${t('page.plan.dropRule')} @click=${() => this.#set('forbidden', draft.forbidden.filter(each => each !== rule))}>×</button></li>`)}</ul>
      ${draft.factors.length < 2 ? html`<p class="small soft">${t('page.plan.neverTwo')}</p>` : html`
        ${[0, 1].map(place => html`<bw-picker .label=${t(place ? 'page.plan.neverWith' : 'page.plan.neverThis')} .none=${t('page.plan.choose')} .value=${this.rule[place]}
          .options=${options} @chosen=${event => { this.rule = this.rule.map((each, i) => (i === place ? event.detail : each)); }}></bw-picker>`)}
        <button type="button" class="button quiet" @click=${() => this.#forbid(levels)}>${t('page.plan.neverAdd')}</button>`}`);
  }

  #room() {
    const { heaters } = this.draft;
    const set = (place, change) => this.#set('heaters', heaters.map((heater, i) => (i === place ? { ...heater, ...change } : heater)));
    return this.#fold('room', t('page.plan.room', { heaters: heaters.length, stations: this.draft.stations, hours: hours(this.draft.minutes) }), html`
      ${heaters.map((heater, place) => html`<div class="pair heater">
        <bw-field .label=${t('page.plan.heater')} maxlength="24" .value=${heater.name} @typed=${event => set(place, { name: event.detail })}></bw-field>
        <bw-field .label=${t('page.plan.positions')} .value=${String(heater.positions)} @typed=${event => set(place, { positions: whole(event.detail) })}></bw-field>
        <button type="button" class="button plain" aria-label=${t('page.plan.drop', { what: heater.name })} @click=${() => this.#set('heaters', heaters.filter((_, i) => i !== place))}>×</button></div>`)}
      <button type="button" class="button quiet" @click=${() => this.#set('heaters', [...heaters, { name: String.fromCharCode(65 + heaters.length), positions: 8 }])}>${t('page.plan.heaterAdd')}</button>
      <div class="pair">${this.#count('stations', t('page.plan.stations'))}${this.#count('minutes', t('page.plan.minutes'))}</div>
      ${this.#count('wastePercent', t('page.plan.waste'))}`);
  }

  #answer() {
    const { draft } = this;
    return this.#fold('answer', t('page.plan.answer', { ratio: draft.ratio }), html`
      <bw-choices .legend=${t('page.plan.ratio')} .value=${String(draft.ratio)} .options=${RATIOS.map(key => ({ key: String(key), label: `×${ratio(key)}` }))}
        @chosen=${event => this.#set('ratio', Number(event.detail))}></bw-choices>
      <bw-choices tall .legend=${t('page.plan.spread')} .hint=${t('page.plan.spreadHint')} .value=${draft.spread === null ? 'earlier' : String(draft.spread)}
        .options=${[{ key: 'earlier', label: t('page.plan.spreadEarlier') }, ...SPREADS.map(key => ({ key: String(key), label: t('page.plan.spreadOf', { spread: key }) }))]}
        @chosen=${event => this.#set('spread', event.detail === 'earlier' ? null : Number(event.detail))}></bw-choices>`);
  }

  #fold(key, title, content) {
    return html`<details class="fold" data-part=${key}><summary>${title}</summary><div class="flow">${content}</div></details>`;
  }

  #count(key, label) {
    return html`<bw-field name=${key} .label=${label} .value=${String(this.draft[key])} @typed=${event => this.#set(key, whole(event.detail))}></bw-field>`;
  }

  #tick(key, label) {
    return html`<label class="tick"><input type="checkbox" .checked=${this.draft[key]} @change=${event => this.#set(key, event.target.checked)}><span>${label}</span></label>`;
  }

  #addFactor(event) {
    const key = event.detail;
    event.target.querySelector('select').value = '';
    event.target.value = '';
    if (key === '+') this.ownName = '';
    else if (key) this.#change(withFactor(this.draft, key));
  }

  #addOwn() {
    if (!this.ownName.trim()) return;
    this.#change(withFactor(this.draft, this.ownName.trim()));
    this.ownName = undefined;
  }

  #fix(event) {
    this.#change(withFixed(this.draft, { parameter: this.fixing, ...event.detail }));
    this.fixing = '';
  }

  #forbid(levels) {
    const chosen = this.rule.filter(Boolean).map(place => levels[Number(place)]);
    if (chosen.length < 2 || chosen[0].parameter === chosen[1].parameter) return;
    this.rule = ['', ''];
    this.#set('forbidden', [...this.draft.forbidden, { levels: chosen }]);
  }

  #set(key, value) {
    this.#change({ ...this.draft, [key]: value });
  }

  #change(draft) {
    this.draft = draft;
    this.dispatchEvent(new CustomEvent('changed', { detail: draft }));
  }

  #submit(event) {
    event.preventDefault();
    this.dispatchEvent(new CustomEvent('deal'));
  }
}

/** What was typed as a whole number; what is none is told by the server as 0. */
const whole = text => Math.round(Number(text.replace(',', '.'))) || 0;

customElements.define('bw-plan-form', PlanForm);
