import { createHash } from "node:crypto";

/** SHA-256 of the UTF-8 bytes of a text, as 64 lower-case hex digits. */
export const sha256 = (text: string): string => createHash("sha256").update(text, "utf8").digest("hex");
