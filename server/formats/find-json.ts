/** The value that a JSON text stands for; undefined for a text that is not JSON. */
export function findJson(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}
