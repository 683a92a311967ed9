import { clock, plain } from '../core/format.js';
import { ruleOf } from '../core/rule.js';
import { t } from '../core/texts.js';
import { html, nothing, svg } from '../kit/element.js';

/** Title, rule and reference conditions, and how fresh the picture is. */
export function wallHead(state, link) {
  return html`<header class="head">
    <h1>${state?.title ?? t('page.header.wall')}</h1>
    ${freshness(link.freshness)}
    ${state ? html`<p class="rule">${ruleSentence(state)}</p>` : trouble(link.problem)}
  </header>`;
}

/** What is compared, how a team's cells count, and whether anything may still change. */
function ruleSentence({ metric, rule, referenceIrradianceWm2: irradiance, entryOpen }) {
  const how = metric === 'yield' ? [] : [t(`page.wall.count.${ruleOf(rule).count}`)];
  return [t(`page.wall.metric.${metric}`, { irradiance: plain(irradiance) }), ...how, ...(entryOpen ? [] : [t('page.wall.closed')])].join(' ');
}

function trouble(problem) {
  if (!problem) return html`<p class="rule">${t('page.wall.waiting')}</p>`;
  return html`<p class="rule">${problem.detail ?? t('page.wall.noAnswer')}</p>`;
}

function freshness({ kind, at }) {
  if (kind === 'waiting') return nothing;
  const words = kind === 'live' ? t('page.wall.live') : t('page.wall.asOf', { time: clock(at) });
  return html`<p class="fresh ${kind}"><svg viewBox="0 0 24 24" aria-hidden="true">${SIGNS[kind]}</svg>${words}</p>`;
}

/** A full disc for live, a broken ring for a picture that waits for its connection. */
const SIGNS = {
  live: svg`<circle cx="12" cy="12" r="8"/>`,
  stale: svg`<circle cx="12" cy="12" r="8" fill="none" stroke="currentColor" stroke-width="4" stroke-dasharray="8 4.57"/>`,
};
