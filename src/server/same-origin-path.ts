const ANYWHERE = "http://own.invalid";

/** A path of this site, without Next's own parameter; "/" for any other address. */
export function sameOriginPath(path: string | null | undefined): string {
  if (!path?.startsWith("/") || !URL.canParse(path, ANYWHERE)) return "/";
  const url = new URL(path, ANYWHERE);
  if (url.origin !== ANYWHERE) return "/";
  url.searchParams.delete("_rsc");
  // The URL is parsed once more where it is used: what it gives back must still be a path.
  const kept = `${url.pathname}${url.search}${url.hash}`;
  return kept.startsWith("//") ? "/" : kept;
}

/** The address of a page that redirects to a path of this site afterwards. */
export function withNext(page: string, next: string): string {
  return next === "/" ? page : `${page}?next=${encodeURIComponent(next)}`;
}
