import { ask } from '../core/http.js';
import { textOf } from '../core/letters.js';
import { t } from '../core/texts.js';
import { html, nothing } from '../kit/kit.js';

const ROLES = ['outcome', 'team', 'day', 'label'];

/** A file, what its columns are for, and what must be mended in it. */
export function chooseFile({ file }, { read, start }) {
  return html`<p>${t('page.findings.fileLead')}</p>
    <div class="field"><label for="table-file">${t('page.findings.file')}</label>
      <p class="hint">${t('page.findings.fileHint')}</p>
      <input id="table-file" type="file" accept=".csv,.tsv,.txt,text/csv,text/plain" @change=${({ target }) => take(target, read)}></div>
    ${file?.reading ? html`<p role="status">${t('page.findings.fileReading', { name: file.name })}</p>` : nothing}
    ${file?.look ? looked(file, read, start) : nothing}`;
}

function looked(file, read, start) {
  const { name, roles, look, reading } = file;
  return html`${reading ? nothing : html`<p role="status"><strong>${name}:</strong> ${t('page.findings.fileHolds', { rows: look.rows, columns: look.columns.length })}</p>`}
    ${mend(look)}${look.columns.length ? purposes(file, read) : nothing}
    <button type="button" class="button" ?disabled=${reading || !roles.outcome || look.problemCount > 0} @click=${start}>${t('page.findings.compareFile')}</button>`;
}

async function take(input, read) {
  const [chosen] = input.files;
  if (chosen) read({ name: chosen.name, csv: await textOf(chosen), roles: {} });
}

/** Has the server look at a file. What is chosen shows at once; of several answers under way only the last one's counts. */
export async function lookAt(page, file, lookOf = serverLook) {
  const before = page.file;
  const asked = { ...file, reading: true };
  page.file = asked;
  try {
    const look = await lookOf(file);
    if (page.file === asked) page.file = { ...file, look };
  } catch (error) {
    if (page.file !== asked) return;
    page.file = before?.look ? { ...before, reading: false } : null;
    throw error;
  }
}

const serverLook = ({ csv, roles }) => ask('/api/findings/table/look', { csv, ...roles });

/** Asks for the file as it was read. */
export const fileRequest = ({ file: { csv, roles } }) => only => ask('/api/findings/table', { csv, ...roles, only });

function purposes({ name, csv, roles, look }, read) {
  const options = look.columns.map(column => ({ key: column.name, label: column.name }));
  const choose = (role, column) => read({ name, csv, look, roles: { ...without(roles, column), [role]: column || null } });
  return html`<div class="roles">${ROLES.map(role => html`<bw-picker .label=${t(`page.findings.role.${role}`)} .none=${t(`page.findings.roleNone.${role}`)}
      .value=${roles[role] ?? ''} .options=${options} @chosen=${({ detail }) => choose(role, detail)}></bw-picker>`)}</div>
    <ul class="notes">${look.columns.filter(({ use }) => ['parameter', 'setAside'].includes(use)).map(column => html`<li>${told(column)}</li>`)}</ul>`;
}

/** A column has one purpose. */
const without = (roles, column) => Object.fromEntries(Object.entries(roles).filter(([, name]) => name !== column));

function told({ name, use, kind, different, missing, oddRow, oddValue }) {
  const what = use === 'setAside' ? 'setAside' : kind;
  return html`<strong>${name}</strong>: ${t(`page.findings.column.${what}`, { different })}
    ${missing > 0 ? t('page.findings.column.missing', { missing }) : ''}
    ${oddRow == null ? '' : t('page.findings.column.odd', { row: oddRow, value: oddValue })}`;
}

/** Everything to mend, by line, column and value. */
function mend({ problems, problemCount }) {
  if (problemCount === 0) return nothing;
  return html`<bw-notice tone="impossible" .text=${t('page.findings.mend', { count: problemCount })}></bw-notice>
    <div class="scroll" tabindex="0" role="region" aria-label=${t('page.findings.mendList')}><table class="mend">
      <thead><tr><th scope="col" class="number">${t('page.findings.mendRow')}</th><th scope="col">${t('page.findings.mendColumn')}</th>
        <th scope="col">${t('page.findings.mendValue')}</th><th scope="col">${t('page.findings.mendWhat')}</th></tr></thead>
      <tbody>${problems.map(({ row, column, kind, value, limit }) => html`<tr><td class="number">${row ?? '–'}</td><td>${column ?? '–'}</td>
        <td><code>${value}</code></td><td>${t(`page.findings.fault.${kind}`, { limit })}</td></tr>`)}</tbody></table></div>`;
}
