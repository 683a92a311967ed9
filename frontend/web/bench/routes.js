/** The bench is one page; the address's fragment says what is open, so that back works: #cell/ID, #outcome/ID/bake ... */

/** The open view and what it is about: {view, id, part}. */
export function route() {
  const [view = '', id = '', part = ''] = location.hash.slice(1).split('/').map(decodeURIComponent);
  return { view, id, part };
}

export const to = (...parts) => `#${parts.map(encodeURIComponent).join('/')}`;

export const go = (...parts) => { location.hash = to(...parts); };

/** Calls back when the fragment changes; each view opens at its top with its heading in focus. */
export function onRoute(draw) {
  addEventListener('hashchange', async () => {
    await draw();
    scrollTo(0, 0);
    const heading = document.querySelector('main h1');
    if (heading) Object.assign(heading, { tabIndex: -1 }).focus({ preventScroll: true });
  });
}
