/** Lab days: all of them, the newest first, and the form that makes a new one. */
import { day as dateWords } from '../core/format.js';
import { get } from '../core/http.js';
import { newId } from '../core/ids.js';
import { DATES } from '../core/language.js';
import { ruleWords } from '../core/rule.js';
import { t } from '../core/texts.js';
import { html, nothing, openPage } from '../kit/kit.js';
import './day-form.js';
import { conditions } from './day-words.js';
import { refusal } from './refusal.js';

const { draw } = await openPage('days');
let making = false;
let freshId = newId();

async function show() {
  try {
    const [days, catalogue] = await Promise.all([get('/api/labdays'), get('/api/catalogue')]);
    draw(page(days.sort(newestFirst), catalogue));
    if (making) setTimeout(() => document.querySelector('bw-field').focus());
  } catch (error) {
    draw(refusal(error));
  }
}

const newestFirst = (a, b) => b.date.localeCompare(a.date) || a.title.localeCompare(b.title);

function page(days, catalogue) {
  const formShown = making || days.length === 0;
  return html`<div class="days flow-wide">
    <div class="apart"><h1>${t('page.days.title')}</h1>
      ${formShown ? nothing : html`<button class="button" @click=${make}><bw-icon name="add"></bw-icon>${t('page.days.make')}</button>`}</div>
    ${formShown ? newDay(catalogue, days.length > 0) : nothing}
    <ul class="bare">${days.map(slide)}</ul>
  </div>`;
}

function newDay(catalogue, mayCancel) {
  return html`<section class="card flow"><h2>${t('page.days.new')}</h2>
    <bw-day-form .key=${freshId} .catalogue=${catalogue} .label=${t('page.days.makeSend')} @saved=${open}></bw-day-form>
    ${mayCancel ? html`<button class="button plain" @click=${cancel}>${t('page.days.cancel')}</button>` : nothing}</section>`;
}

function slide(day) {
  const [, , date] = day.date.split('-');
  return html`<li class="slide"><div class="label"><span class="date">${Number(date)}</span><span class="month">${month(day.date)}</span></div>
    <div class="body">
      <h2><a href="/desk.html#${day.id}">${day.title}</a></h2>
      <p class="soft">${dateWords(day.date)} · ${ruleWords(day.rule)} · ${conditions(day)}</p>
      <p class="beside"><span class="tag ${day.entryOpen ? 'fine' : ''}">${t(day.entryOpen ? 'page.days.open' : 'page.days.closed')}</span>
        ${['plan', 'light', 'wall', 'findings', 'data'].map(page => html`<a href="/${page}.html#${day.id}">${t(`page.header.${page}`)}</a>`)}</p>
    </div></li>`;
}

const month = date => new Date(`${date}T12:00:00`).toLocaleDateString(DATES, { month: 'short', year: '2-digit' });

function make() {
  making = true;
  show();
}

function cancel() {
  making = false;
  freshId = newId();
  show();
}

function open({ detail: day }) {
  location.assign(`/desk.html#${day.id}`);
}

show();
