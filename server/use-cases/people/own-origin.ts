/** Tells an address of the house, as browsers show it, from any other: one of its settings, or this machine's own. */
export const isOwnAddress = (origin: string, origins: readonly string[]): boolean =>
  origins.includes(origin) || /^http:\/\/(?:localhost|127\.0\.0\.1|\[::1\])(?::\d{1,5})?$/.test(origin);
