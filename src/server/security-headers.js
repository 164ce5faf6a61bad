/**
 * What every answer says about what a page may do. The page's own policy for scripts and styles is
 * written into the page by the build, because it names each script.
 * Source: OWASP Secure Headers Project.
 */
export const securityHeaders = {
  'content-security-policy': "frame-ancestors 'none'",
  'cross-origin-opener-policy': 'same-origin',
  'cross-origin-resource-policy': 'same-origin',
  'permissions-policy': 'camera=(), microphone=(), geolocation=(), interest-cohort=()',
  'referrer-policy': 'no-referrer',
  'x-content-type-options': 'nosniff',
  'x-frame-options': 'DENY',
};
