import { type Problem, problem } from "../problem.ts";

/** Letters and digits of any script, with dot, hyphen, underscore or @ between them; 2 to 64 characters. */
const SIGN_IN_NAME = /^[\p{L}\p{N}][\p{L}\p{M}\p{N}.@_-]{0,62}[\p{L}\p{M}\p{N}]$/u;

/** The one spelling of a name to sign in with: two that a person would take for the same are the same. */
export function readSignInName(text: string): string | Problem {
  const name = text.normalize("NFKC").trim().toLowerCase();
  return SIGN_IN_NAME.test(name)
    ? name
    : problem(
        "WRONG_FORMAT",
        "A name to sign in with has 2 to 64 letters or digits, with . - _ or @ between them.",
        ["signInName"],
      );
}

/** A name as the others see it: 1 to 80 characters of text. */
export function readShownName(text: string): string | Problem {
  const name = text.normalize("NFC").replaceAll(/\s+/g, " ").trim();
  return name.length > 0 && name.length <= 80 && !/\p{C}/u.test(name)
    ? name
    : problem("WRONG_FORMAT", "A name has 1 to 80 characters of text.", ["name"]);
}
