import { plusMinus, shownNumber, spelled } from '/core/format.js';
import { same, spec } from './spec.js';

// JCGM 100:2008, 7.2.6: a standard uncertainty is given with one or two digits, the estimate with the same decimals.
spec('gives a value and its uncertainty one prefix and the decimals that the uncertainty justifies', () =>
  same(plusMinus(5.87e-5, 1.5e-6, 'A'), '58.7 ± 1.5 µA'));

spec('writes an area in square centimetres', () => same(plusMinus(1.96e-4, 9e-6, 'm²'), '1.96 ± 0.09 cm²'));

spec('leaves a plain number without a unit', () => same(plusMinus(1, 0.05, '1'), '1.00 ± 0.05'));

spec('takes the prefix of the uncertainty where the value is zero', () => same(plusMinus(0, 2.9e-8, 'A'), '0 ± 29 nA'));

spec('reads back a number as English and as German write it', () =>
  same([shownNumber('1,041', ','), shownNumber('6,3', '\u202f'), shownNumber('1\u202f041,5', '\u202f'), shownNumber('\u22126.3', ',')],
    [1041, 6.3, 1041.5, -6.3]));

spec('spells a calculation with the decimal mark of the language and a true minus sign', () =>
  same(spelled('388.3 mV + 412.0 mV · -0.4000 %/K · (25 °C − 25.00 °C)', ','), '388,3 mV + 412,0 mV · \u22120,4000 %/K · (25 °C − 25,00 °C)'));
