/** Says why it is not as it has to be before requests are sent here; nothing where it is. */
export type Check = () => Promise<string | undefined> | string | undefined;

/** Milliseconds that one check may take: who asks looks every few seconds. */
const PATIENCE = 2000;

/** Makes all checks at once. Those that fail, throw or dawdle are told by name, each with why. */
export async function readReadiness(
  checks: Readonly<Record<string, Check>>,
): Promise<{ readonly ready: boolean; readonly not?: Readonly<Record<string, string>> }> {
  const found = await Promise.all(
    Object.entries(checks).map(async ([name, check]) => [name, await said(check)] as const),
  );
  const not = found.flatMap(([name, why]) => (why === undefined ? [] : [[name, why] as const]));
  return not.length === 0 ? { ready: true } : { ready: false, not: Object.fromEntries(not) };
}

/** What went wrong inside a check stands in the log of whoever failed, not in an answer. */
async function said(check: Check): Promise<string | undefined> {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const late = new Promise<string>((resolve) => {
    timer = setTimeout(() => resolve(`gave no answer within ${PATIENCE} ms`), PATIENCE);
  });
  try {
    return await Promise.race([check(), late]);
  } catch {
    return "does not answer";
  } finally {
    clearTimeout(timer);
  }
}
