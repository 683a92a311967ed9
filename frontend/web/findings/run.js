import { get, put } from '../core/http.js';
import { plain } from '../core/format.js';
import { t } from '../core/texts.js';
import { html, nothing } from '../kit/kit.js';

const LOOK_AGAIN_MS = 500;
const OVER = new Set(['done', 'ended', 'failed']);

/** Follows a long look that the server started: `changed` when it has come further, `said` with what it says, `failed`. */
export function follow(started, { changed, said, failed }) {
  const run = { now: started, heard: 'none', stopping: false, stop };
  let left = false;

  async function look() {
    if (left) return;
    try {
      run.now = await get(`/api/findings/runs/${started.id}`);
      if (run.now.answer !== run.heard) {
        run.heard = run.now.answer;
        said(await get(`/api/findings/runs/${started.id}/answer`));
      }
    } catch (error) {
      failed(error);
      return;
    }
    changed();
    if (!OVER.has(run.now.state)) setTimeout(look, LOOK_AGAIN_MS);
  }

  async function stop() {
    if (OVER.has(run.now.state)) {
      left = true;
      return;
    }
    run.stopping = true;
    changed();
    await put(`/api/findings/runs/${started.id}/end`, { open: false }).catch(failed);
  }

  setTimeout(look);
  return run;
}

/** How far it has come, with a way to stop it. */
export function progress({ now, heard, stopping }, stop) {
  const { state, steps, of, draws, problem } = now;
  if (state === 'done') return nothing;
  return html`<section class="run flow" aria-label=${t('page.findings.run')}>
    <p role="status">${t(`page.findings.run.${state}`)} ${problem ? t(`problem.${problem}`) : ''} ${heard === 'rough' ? t('page.findings.run.rough') : ''}</p>
    ${OVER.has(state) ? nothing : html`<progress max=${Math.max(1, of)} value=${Math.min(steps, of)}></progress>
      <p class="apart"><span class="soft">${t('page.findings.run.far', { steps, of, draws: plain(draws) })}</span>
      <button type="button" class="button quiet" ?disabled=${stopping} @click=${stop}>${t(`page.findings.run.${stopping ? 'stopping' : 'stop'}`)}</button></p>`}
  </section>`;
}
