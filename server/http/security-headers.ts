import type { ServerResponse } from "node:http";

const HEADERS: Readonly<Record<string, string>> = {
  "Content-Security-Policy": [
    "default-src 'self'",
    "img-src 'self'",
    "style-src 'self'",
    "object-src 'none'",
    "base-uri 'none'",
    "form-action 'self'",
    "frame-ancestors 'none'",
  ].join("; "),
  "X-Content-Type-Options": "nosniff",
  "Referrer-Policy": "no-referrer",
  "Cross-Origin-Opener-Policy": "same-origin",
  "Cross-Origin-Resource-Policy": "same-origin",
  "X-Frame-Options": "DENY",
};

/** Sets what every answer carries: nothing is loaded from elsewhere, framed, guessed or told on. */
export function setSecurityHeaders(response: ServerResponse): void {
  for (const [name, value] of Object.entries(HEADERS)) response.setHeader(name, value);
}
