/** The content-security policy of every page, as its meta tag and its header state it: nothing inline, nobody else's. */
export const policy: string = [
  "default-src 'none'",
  "script-src 'self' 'wasm-unsafe-eval'",
  "style-src 'self'",
  "img-src 'self' data:",
  "font-src 'self'",
  "connect-src 'self'",
  "manifest-src 'self'",
  "worker-src 'self'",
  "base-uri 'none'",
  "form-action 'self'",
].join("; ");

/** The policy with who may frame the page, which a meta tag cannot say. */
export const policyFramedBy = (ancestors: "'none'" | "*"): string =>
  `${policy}; frame-ancestors ${ancestors}`;
