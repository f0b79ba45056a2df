const policyTag = /<meta\s+http-equiv="Content-Security-Policy"\s+content="([^"]+)"\s*\/?>\s*/;

/**
 * The page with its content policy as a header instead of a tag. A browser that sees the tag asks for nothing a page
 * names until it has come to it, a header holds from the first byte: the script is on its way a good while sooner.
 */
export async function withPolicyAsHeader(page: Response): Promise<Response> {
  const html = await page.text();
  const headers = new Headers(page.headers);
  // They are of the bytes as the host sent them.
  headers.delete('Content-Length');
  headers.delete('Content-Encoding');
  const policy = policyTag.exec(html)?.[1];
  if (policy !== undefined) headers.append('Content-Security-Policy', policy);
  const { status, statusText } = page;
  return new Response(html.replace(policyTag, ''), { status, statusText, headers });
}
