import { clock, plain } from '../core/format.js';
import { t } from '../core/texts.js';
import { html, nothing, svg } from '../kit/element.js';

/** Title, rule and reference conditions, and how fresh the picture is. */
export function wallHead(state, link) {
  return html`<header class="head">
    <h1>${state?.title ?? t('page.header.wall')}</h1>
    ${freshness(link.freshness)}
    ${state ? html`<p class="rule">${ruleOf(state)}</p>` : trouble(link.problem)}
  </header>`;
}

function ruleOf({ rule, referenceIrradianceWm2: irradiance, entryOpen }) {
  const reference = t('page.wall.reference', { irradiance: plain(irradiance) });
  return [t(`page.wall.rule.${rule}`), reference, ...(entryOpen ? [] : [t('page.wall.closed')])].join(' ');
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
