import { type Answered, askAccount } from "./ask-account.ts";

/** Where this window keeps, while it is elsewhere, what it has to give back, and where to go then. */
const KEPT = "scribeline-way-elsewhere";

/** Leaves for the other provider; what is answered is a refusal, or nothing is seen of it any more. */
export async function goElsewhere(
  action: "begin-elsewhere" | "link-elsewhere",
  input: object,
  to: string,
): Promise<Answered<unknown>> {
  const { origin } = window.location;
  const came = await askAccount<{ address: string; way: string }>(action, { origin, ...input });
  if ("refused" in came) return came;
  window.sessionStorage.setItem(KEPT, JSON.stringify({ way: came.done.way, to }));
  window.location.assign(came.done.address);
  return came;
}

/** Gives back what was kept, once: with the address that the browser came back to it ends the way. */
export async function comeBack(): Promise<{ readonly answer: Answered<unknown>; readonly to: string }> {
  const kept = window.sessionStorage.getItem(KEPT);
  window.sessionStorage.removeItem(KEPT);
  const { way, to } = JSON.parse(kept ?? '{"way":"","to":"/"}') as { way: string; to: string };
  return { answer: await askAccount("finish-elsewhere", { way, cameBackTo: window.location.href }), to };
}
