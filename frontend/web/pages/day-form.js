import { serverClock } from '../core/clock.js';
import { dateHere, plain } from '../core/format.js';
import { put } from '../core/http.js';
import { ruleKey, ruleOf } from '../core/rule.js';
import { has, t } from '../core/texts.js';
import '../entry/entry.js';
import { PageElement, html, nothing } from '../kit/kit.js';

/** What a new lab day starts with: full sun on a film of 15 mm by 15 mm. */
const START = {
  title: '', referenceIrradianceWm2: 1000, referenceAreaCm2: 2.25, cellsPerTeam: 3, teamsCreateThemselves: true,
};

/**
 * The form of a lab day: `day` with its `etag` is edited, without them a new one is made under `key`, with the settings of
 * the day `like` if there is one. Fires `saved` with the server's answer.
 */
class DayForm extends PageElement {
  static properties = {
    key: {}, day: { attribute: false }, like: { attribute: false }, etag: {}, catalogue: { attribute: false }, label: {}, rule: { state: true },
  };

  render() {
    const usual = { ...START, rule: ruleKey(usualOf(this.catalogue.metrics[0])) };
    const start = this.day ?? { ...usual, ...this.like, date: today(), keepUntil: null };
    this.rule ??= ruleOf(start.rule);
    return html`<bw-form .label=${this.label} .send=${this.#send} .fields=${this.#fields(start)}></bw-form>`;
  }

  #fields(start) {
    return html`
      <bw-field name="title" maxlength="80" .label=${t('page.day.title')} .hint=${t('page.day.titleHint')} .value=${start.title}></bw-field>
      <bw-field name="date" kind="date" .label=${t('page.day.date')} .value=${start.date}></bw-field>
      <div class="pair">
        ${this.#amount('referenceIrradiance', t('page.day.irradiance'), start.referenceIrradianceWm2)}
        ${this.#amount('referenceArea', t('page.day.area'), start.referenceAreaCm2)}
      </div>
      ${this.#metrics()}${this.#counts()}
      <bw-field name="cellsPerTeam" .label=${t('page.day.cells')} .hint=${t('page.day.cellsHint')} .value=${String(start.cellsPerTeam)}></bw-field>
      <label class="tick"><input type="checkbox" name="teamsCreateThemselves" .checked=${start.teamsCreateThemselves}>
        <span>${t('page.day.selfMade')}</span></label>
      <bw-field name="keepUntil" kind="date" .label=${t('page.day.keepUntil')} .hint=${t('page.day.keepUntilHint')} .value=${start.keepUntil ?? ''}></bw-field>`;
  }

  #metrics() {
    const { metric } = this.rule;
    return html`<bw-choices .legend=${t('page.day.metric')} .hint=${t(this.day ? 'page.day.ruleChange' : 'page.day.ruleHint')} .value=${metric}
        .options=${this.catalogue.metrics.map(({ key }) => ({ key, label: t(`catalogue.metric.${key}`) }))}
        @chosen=${event => this.#compareBy(event.detail)}></bw-choices>
      <p class="means" role="status">${t(`page.day.means.${metric}`)} <strong>${t(`page.day.needs.${metric}`)}</strong></p>`;
  }

  #counts() {
    const { metric, count } = this.rule;
    const { counts } = this.#metric(metric);
    const whyFewer = `page.day.fewerCounts.${metric}`;
    return html`${counts.length > 1 ? html`<bw-choices tall .legend=${t('page.day.rule')} .value=${count}
        .options=${counts.map(key => ({ key, label: t(`catalogue.count.${key}`) }))}
        @chosen=${event => { this.rule = { metric, count: event.detail }; }}></bw-choices>` : nothing}
      ${has(whyFewer) ? html`<p class="soft small">${t(whyFewer)}</p>` : nothing}`;
  }

  #compareBy(key) {
    const metric = this.#metric(key);
    const { count } = this.rule;
    this.rule = metric.counts.includes(count) ? { metric: key, count } : usualOf(metric);
  }

  #metric(key) {
    return this.catalogue.metrics.find(metric => metric.key === key);
  }

  #amount(key, label, value) {
    const { fields, units } = this.catalogue;
    this.amounts ??= {};
    this.amounts[key] ??= { text: plain(value).replaceAll(',', ''), unit: fields.find(field => field.key === key).units[0] };
    return html`<bw-entry name=${key} .label=${label} .field=${fields.find(field => field.key === key)} .units=${units}
      .value=${this.amounts[key]} @entered=${event => { this.amounts[key] = event.detail; }}></bw-entry>`;
  }

  #send = async values => {
    const entries = [...this.querySelectorAll('bw-entry')];
    const faulty = entries.filter(entry => !entry.check().ready);
    if (faulty.length > 0) return faulty[0].focus();
    const [referenceIrradiance, referenceArea] = entries.map(entry => entry.typed);
    const saved = await put(`/api/labdays/${this.key}`, {
      title: values.title.trim(),
      date: values.date,
      referenceIrradiance,
      referenceArea,
      rule: ruleKey(this.rule),
      cellsPerTeam: Number(values.cellsPerTeam),
      teamsCreateThemselves: values.teamsCreateThemselves === 'on',
    }, this.etag ? { 'If-Match': this.etag } : {});
    const keepUntil = values.keepUntil || null;
    const detail = keepUntil === (saved.keepUntil ?? null) ? saved : await put(`/api/labdays/${this.key}/retention`, { keepUntil });
    this.dispatchEvent(new CustomEvent('saved', { detail }));
  };
}

const usualOf = ({ key, counts: [count] }) => ({ metric: key, count });

const today = () => dateHere(serverClock.now());

customElements.define('bw-day-form', DayForm);
