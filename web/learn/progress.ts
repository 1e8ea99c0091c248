const KEY = "scribeline.lessons.gone-through";
const listeners = new Set<() => void>();
let known: { readonly text: string | null; readonly ids: readonly string[] } = { text: null, ids: [] };

/** The browser may refuse to keep anything: then nothing is kept, and nothing fails. */
function kept(): string | null {
  try {
    return localStorage.getItem(KEY);
  } catch {
    return null;
  }
}

function parse(text: string | null): readonly string[] {
  if (text === null) return [];
  try {
    const value: unknown = JSON.parse(text);
    return Array.isArray(value) ? value.filter((each): each is string => typeof each === "string") : [];
  } catch {
    return [];
  }
}

/** Lessons gone through in this browser, by id; the same list as long as nothing changes. */
export function goneThrough(): readonly string[] {
  const text = kept();
  if (text !== known.text) known = { text, ids: parse(text) };
  return known.ids;
}

function keep(ids: readonly string[]): void {
  try {
    if (ids.length === 0) localStorage.removeItem(KEY);
    else localStorage.setItem(KEY, JSON.stringify(ids));
  } catch {
    return;
  }
  for (const tell of listeners) tell();
}

/** Keeps that a lesson was gone through, in this browser alone. */
export function markGoneThrough(id: string): void {
  const ids = goneThrough();
  if (!ids.includes(id)) keep([...ids, id]);
}

export const forgetAll = (): void => keep([]);

/** Tells of every change, here and in other windows. */
export function watchProgress(tell: () => void): () => void {
  listeners.add(tell);
  addEventListener("storage", tell);
  return () => {
    listeners.delete(tell);
    removeEventListener("storage", tell);
  };
}
