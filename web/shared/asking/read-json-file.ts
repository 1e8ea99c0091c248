/** Largest file that the server takes, in bytes. */
const LARGEST = 20_000_000;

/** The value in a file of JSON that a person chose, or why it cannot be taken. */
export async function readJsonFile(
  file: File,
): Promise<{ readonly value: unknown } | { readonly refusal: string }> {
  if (file.size > LARGEST) return { refusal: `${file.name} is larger than ${LARGEST / 1_000_000} MB.` };
  try {
    return { value: JSON.parse(new TextDecoder("utf-8", { fatal: true }).decode(await file.arrayBuffer())) };
  } catch {
    return { refusal: `${file.name} is not JSON; choose the file as it was saved.` };
  }
}
