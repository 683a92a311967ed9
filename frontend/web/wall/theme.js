const KEPT = 'berrywatt.wall.theme';
const sheet = document.getElementById('dark');

/** The Wall is dark unless this browser was told otherwise: a projector in a darkened lab should not blind anyone. */
export const isDark = () => document.documentElement.dataset.theme === 'dark';

export function switchTheme() {
  wear(isDark() ? 'light' : 'dark');
  localStorage.setItem(KEPT, document.documentElement.dataset.theme);
}

function wear(theme) {
  sheet.media = theme === 'dark' ? 'all' : 'not all';
  document.documentElement.dataset.theme = theme;
}

wear(localStorage.getItem(KEPT) ?? 'dark');
