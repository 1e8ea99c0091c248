import type { Mirror } from "./open-mirror.ts";

/** Says how far a mirror is that was not built yet since the start. One that is built anew keeps nobody waiting. */
export function findUnbuilt(mirror: Mirror): string | undefined {
  const { builds, progress } = mirror.status();
  if (builds > 0) return undefined;
  return `is being built, with ${progress?.terms ?? 0} terms and ${progress?.claims ?? 0} claims so far`;
}
