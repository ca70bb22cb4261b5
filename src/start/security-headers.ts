interface Page {
  readonly nonce: string;
  /** Development reloads by evaluating code. */
  readonly dev: boolean;
}

/** Next reads the nonce from this same header on the request and puts it on the scripts that it writes. */
export function contentSecurityPolicy({ nonce, dev }: Page): string {
  const scripts = ["'self'", `'nonce-${nonce}'`, "'strict-dynamic'", ...(dev ? ["'unsafe-eval'"] : [])];
  return [
    "default-src 'self'",
    `script-src ${scripts.join(" ")}`,
    // Drawings and rulers are placed by style attributes, which carry no nonce.
    "style-src 'self' 'unsafe-inline'",
    "img-src 'self' data: blob:",
    "worker-src 'self'",
    "object-src 'none'",
    "base-uri 'none'",
    "form-action 'self'",
    "frame-ancestors 'none'",
  ].join("; ");
}

export const SECURITY_HEADERS = {
  "X-Content-Type-Options": "nosniff",
  "Referrer-Policy": "same-origin",
  "Permissions-Policy": "camera=(), geolocation=(), microphone=()",
  "Cross-Origin-Opener-Policy": "same-origin",
} as const;
