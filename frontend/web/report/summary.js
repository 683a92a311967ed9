import { placeOf } from '../core/place.js';
import { rankedTexts } from '../core/ranked.js';
import { t } from '../core/texts.js';
import { compared } from '../findings/overview.js';
import { html } from '../kit/kit.js';

const MOST_FINDINGS = 3;

/** What a student should know who reads nothing else. */
export function summary({ board, findings, words }) {
  return html`<section class="flow short"><h2>${t('page.report.short')}</h2>
    <p>${built(board, findings.cells)}</p><p>${first(board)}</p>${learned(findings, words)}
    <p class="soft">${t('page.report.shortCaution')}</p></section>`;
}

function built({ teams }, cells) {
  const count = standing => cells.filter(cell => cell.standing === standing).length;
  return t('page.report.built', { teams: teams.length, cells: cells.length, counted: count('counts'), failed: count('failed'), waiting: count('waiting') });
}

/** Who stands first, and whether the uncertainties let anybody say so. */
export function first({ teams, metric }) {
  const leaders = teams.filter(({ place }) => place === 1);
  if (leaders.length === 0) return t('page.report.nobodyFirst');
  if (leaders.length > 1) return t('page.report.sharedFirst', { teams: leaders.map(({ name }) => name).join(', ') });
  const [{ name, figure, placeHigh }] = leaders;
  const said = t('page.report.first', { team: name, metric: `catalogue.metric.${metric}`, ...rankedTexts(figure) });
  return `${said} ${placeHigh > 1 ? t('page.report.firstOpen', { place: placeOf(leaders[0]) }) : t('page.report.firstSure')}`;
}

function learned(findings, words) {
  const told = compared(findings).filter(({ strength }) => ['clear', 'suggestive'].includes(strength)).slice(0, MOST_FINDINGS);
  if (told.length === 0) return html`<p>${t('page.report.learnedNothing')}</p>`;
  return html`<p>${t('page.report.learned')}</p><ul class="notes">${told.map(one => html`<li><strong>${words.parameter(one.parameter)}</strong>
    (${t(`finding.strength.${one.strength}`)}): ${words.sentence(one.sentence, one.parameter)}</li>`)}</ul>`;
}
