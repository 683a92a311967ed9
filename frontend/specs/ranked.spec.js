import { rankedTexts, shown } from '/core/ranked.js';
import { ruleKey, ruleOf } from '/core/rule.js';
import { same, spec } from './spec.js';

const figure = (value, unit, u) => ({ value, unit, standardUncertainty: u, low: value - 2 * u, high: value + 2 * u });

spec('shows what is ranked in the unit that a class uses', () =>
  same([figure(0.063, 'Wm2', 0.002), figure(5.31, 'Am2', 0.2), figure(0.412, 'V', 0.004), figure(0.667, 'part', 0.2), figure(1.35, 'times', 0.12)]
    .map(rankedTexts).map(({ value, unit }) => `${value} ${unit}`),
  ['6.3 µW/cm²', '530 µA/cm²', '412 mV', '70 %', '1.35 × control']));

spec('shows what is certain without decimals', () => same(rankedTexts(figure(1, 'times', 0)).value, '1'));

spec('draws it in the same unit', () => same(shown(figure(0.5, 'part', 0.125)), { value: 50, standardUncertainty: 12.5, low: 25, high: 75 }));

spec('reads a rule and writes it again', () =>
  same(['medianOfDeclared', 'voltage.bestVerified'].map(key => ruleKey(ruleOf(key))), ['medianOfDeclared', 'voltage.bestVerified']));

spec('takes power per area where a rule names no metric', () => same(ruleOf('meanOfDeclared'), { metric: 'powerDensity', count: 'meanOfDeclared' }));
