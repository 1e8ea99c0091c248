import { startAuthentication, startRegistration } from "@simplewebauthn/browser";
import { type Answered, askAccount } from "./ask-account.ts";

type Options<Start extends (asked: never) => unknown> = Parameters<Start>[0] extends {
  optionsJSON: infer Json;
}
  ? Json
  : never;
const gaveUp: Answered<never> = {
  refused: [{ code: "GAVE_UP", message: "The device gave no key. Nothing was changed. Try again." }],
};
const origin = () => window.location.origin;

/** Lets the device make a key for one's own account. */
export async function makePasskey(label: string, confirming: object): Promise<Answered<unknown>> {
  const begun = await askAccount<{ options: Options<typeof startRegistration>; way: string }>(
    "begin-passkey",
    {
      ...{ origin: origin(), ...confirming },
    },
  );
  if ("refused" in begun) return begun;
  try {
    const response = JSON.stringify(await startRegistration({ optionsJSON: begun.done.options }));
    return askAccount("finish-passkey", { way: begun.done.way, response, label });
  } catch {
    return gaveUp;
  }
}

/** Signs in by a key of the device. */
export async function signInByPasskey(): Promise<Answered<unknown>> {
  const begun = await askAccount<{ options: Options<typeof startAuthentication>; way: string }>(
    "begin-passkey-sign-in",
    { origin: origin() },
  );
  if ("refused" in begun) return begun;
  try {
    const response = JSON.stringify(await startAuthentication({ optionsJSON: begun.done.options }));
    return askAccount("finish-passkey-sign-in", { way: begun.done.way, response });
  } catch {
    return gaveUp;
  }
}
