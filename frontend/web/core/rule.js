/** Scoring rules by their key: "ratioToControl.medianOfDeclared", or the count alone where power per area is ranked. */
import { t } from './texts.js';

const USUAL = 'powerDensity';

/** What is compared and how a team's cells count. */
export function ruleOf(key) {
  const [count, metric = USUAL] = key.split('.').reverse();
  return { metric, count };
}

export const ruleKey = ({ metric, count }) => (metric === USUAL ? count : `${metric}.${count}`);

/** "Power per area: the middle one of a team's cells, failures as 0" */
export function ruleWords(key) {
  const { metric, count } = ruleOf(key);
  const what = t(`catalogue.metric.${metric}`);
  return metric === 'yield' ? what : t('catalogue.rule', { what, how: t(`catalogue.count.${count}`) });
}
