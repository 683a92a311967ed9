/** Whether the person asked the system for less motion. */
export const calm = () => matchMedia('(prefers-reduced-motion: reduce)').matches;
