import { leadsOf, pairsOf } from '/bench/leads.js';
import { get } from '/core/http.js';
import { close, same, spec } from './spec.js';

const catalogue = await get('/api/catalogue');
const shown = (valueSi, resolutionSi = 0.001) => ({ valueSi, resolutionSi });

spec('keeps the cell and the meter’s zero apart', () => {
  const { own, zero, consistent } = leadsOf(shown(0.048), shown(-0.052), catalogue.meterZeroSteps);
  close(own, 0.05);
  close(zero, -0.002);
  same(consistent, true);
});

spec('doubts a pair that did not turn its sign, up to ten steps of the last digit', () => {
  same(leadsOf(shown(0.05), shown(0.05), 10).consistent, false);
  same(leadsOf(shown(0.02), shown(0), 10).consistent, true);
  same(leadsOf(shown(0.021), shown(0), 10).consistent, false);
});

spec('reads pairs out of a draft, and none that is half', () => {
  const draft = { voltage: { text: '5', unit: 'mV' }, swappedVoltage: { text: '-3' }, current: { text: '0.4', unit: 'uA' }, swappedCurrent: {} };
  same(pairsOf(draft, catalogue).map(([key]) => key), ['voltage']);
});
