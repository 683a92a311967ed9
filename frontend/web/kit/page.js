/** Opens a page: who is here, the band at the top, and a place to draw. */
import { caller } from '../core/caller.js';
import { Refused } from '../core/http.js';
import { t } from '../core/texts.js';
import { html, render } from './element.js';
import './header.js';
import './notice.js';

const AGAIN_MS = 3_000;

/**
 * Asks who is here (and keeps asking while the server is silent), names the page and hands out `draw(template)`.
 * @param here key of the page, as in page.header.KEY and page.KEY.title
 */
export async function openPage(here) {
  document.title = `${t(`page.header.${here}`)} · Berrywatt`;
  const main = document.getElementById('main');
  main.replaceChildren();
  const draw = template => render(template, main);
  const who = await whoIsHere(draw);
  const header = document.querySelector('bw-header');
  Object.assign(header, { who, here, day: who.labDayId });
  return { who, header, draw };
}

async function whoIsHere(draw) {
  for (;;) {
    try {
      return await caller();
    } catch (error) {
      if (error instanceof Refused) throw error;
      draw(html`<bw-notice tone="unusual" .heading=${t('page.header.silent')} .text=${t('page.header.silentMore')}></bw-notice>`);
      await new Promise(resolve => setTimeout(resolve, AGAIN_MS));
    }
  }
}
