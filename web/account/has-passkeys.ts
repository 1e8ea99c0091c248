/** Whether this browser has passkeys for the address that it is at; no browser has any for an address in digits. */
export const hasPasskeys = (): boolean =>
  "PublicKeyCredential" in window && !/^[\d.]+$|:/.test(window.location.hostname);
