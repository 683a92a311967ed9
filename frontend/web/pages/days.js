/** Lab days: all of them, the newest first, and the ways to a new one: by hand, like another, or from an archive. */
import { day as dateWords } from '../core/format.js';
import { get } from '../core/http.js';
import { newId } from '../core/ids.js';
import { DATES } from '../core/language.js';
import { ruleWords } from '../core/rule.js';
import { t } from '../core/texts.js';
import '../days/bring-in.js';
import '../days/copy-form.js';
import { found } from '../days/find.js';
import { kept } from '../days/kept.js';
import { html, nothing, openPage } from '../kit/kit.js';
import './day-form.js';
import { conditions } from './day-words.js';
import { refusal } from './refusal.js';

const FEW = 3;
const PAGES = ['plan', 'light', 'wall', 'findings', 'report', 'data'];

const { draw } = await openPage('days');
let days = [];
let catalogue = null;
let typed = '';
let brought = null;
/** What is being made: `{ way: 'hand' | 'like' | 'archive', like }`, or null. */
let making = null;
let freshId = newId();

async function load() {
  try {
    [days, catalogue] = await Promise.all([get('/api/labdays'), get('/api/catalogue')]);
    days.sort(newestFirst);
    if (days.length === 0) making ??= { way: 'hand' };
    show();
  } catch (error) {
    draw(refusal(error));
  }
}

const newestFirst = (a, b) => b.date.localeCompare(a.date) || a.title.localeCompare(b.title);

function show() {
  draw(html`<div class="days flow-wide">
    <div class="apart"><h1>${t('page.days.title')}</h1>
      <div class="beside ways">${way('hand', 'add', 'page.days.make')}${way('archive', 'open', 'page.days.bring')}</div></div>
    ${brought ? html`<bw-notice tone="fine" .text=${t('page.days.brought', { title: brought.title })}
      .more=${html`<a class="button quiet" href="/desk.html#${brought.labDayId}">${t('page.days.broughtOpen')}</a>`}></bw-notice>` : nothing}
    ${making ? html`<section class="card flow making"><h2>${title()}</h2>${form()}
      ${days.length > 0 ? html`<button class="button plain" @click=${cancel}>${t('page.days.cancel')}</button>` : nothing}</section>` : nothing}
    ${days.length > FEW ? search() : nothing}
    <ul class="bare">${found(days, typed).map(slide)}</ul>
  </div>`);
}

function way(key, icon, text) {
  return making?.way === key ? nothing
    : html`<button class="button ${key === 'hand' ? '' : 'quiet'}" @click=${() => make({ way: key })}><bw-icon name=${icon}></bw-icon>${t(text)}</button>`;
}

const title = () => ({ hand: t('page.days.new'), archive: t('page.days.bringTitle'), like: t('page.days.copyTitle', { title: making.like?.title }) }[making.way]);

function form() {
  if (making.way === 'archive') return html`<bw-bring-in @brought=${({ detail }) => arrived(detail)}></bw-bring-in>`;
  if (making.way === 'like') return html`<bw-day-copy .source=${making.like} .catalogue=${catalogue} @copied=${open}></bw-day-copy>`;
  return html`<bw-day-form .key=${freshId} .catalogue=${catalogue} .label=${t('page.days.makeSend')} @saved=${open}></bw-day-form>`;
}

function search() {
  const count = found(days, typed).length;
  return html`<div class="search"><bw-field kind="search" .label=${t('page.days.find')} .value=${typed}
      @typed=${({ detail }) => { typed = detail; show(); }}></bw-field>
    <p class="soft small" role="status">${typed ? t('page.days.found', { count, all: days.length }) : nothing}</p></div>`;
}

function slide(day) {
  const [, , date] = day.date.split('-');
  return html`<li class="slide"><div class="label"><span class="date">${Number(date)}</span><span class="month">${month(day.date)}</span></div>
    <div class="body">
      <h2><a href="/desk.html#${day.id}">${day.title}</a></h2>
      <p class="soft">${dateWords(day.date)} · ${ruleWords(day.rule)} · ${conditions(day)}</p>
      <p class="beside"><span class="tag ${day.entryOpen ? 'fine' : ''}">${t(day.entryOpen ? 'page.days.open' : 'page.days.closed')}</span>
        ${kept(day)}</p>
      <p class="ways-in">${PAGES.map(page => html`<a href="/${page}.html#${day.id}">${t(`page.header.${page}`)}</a>`)}
        <button class="again" aria-label=${t('page.days.copyAbout', { title: day.title })}
          @click=${() => make({ way: 'like', like: day })}>${t('page.days.copy')}</button></p>
    </div></li>`;
}

const month = date => new Date(`${date}T12:00:00`).toLocaleDateString(DATES, { month: 'short', year: '2-digit' });

function make(what) {
  making = null;
  show();
  making = what;
  brought = null;
  show();
  const made = document.querySelector('.making');
  made.scrollIntoView({ block: 'start' });
  setTimeout(() => made.querySelector('input')?.focus({ preventScroll: true }), 50);
}

function cancel() {
  making = null;
  freshId = newId();
  show();
}

function arrived(answer) {
  brought = answer;
  making = null;
  load();
}

function open({ detail: day }) {
  location.assign(`/desk.html#${day.id}`);
}

load();
