const LETTERS = "ABCDEFGHIJKLMNOPQRSTUVWXYZ234567";

/** Bytes in the base32 of RFC 4648, without padding. */
export function toBase32(bytes: Uint8Array): string {
  const bits = Array.from(bytes, (byte) => byte.toString(2).padStart(8, "0")).join("");
  return (bits.match(/.{1,5}/g) ?? [])
    .map((five) => LETTERS[Number.parseInt(five.padEnd(5, "0"), 2)])
    .join("");
}

/** The bytes of such a text; what is no letter of it is a defect of the caller (RangeError). */
export function fromBase32(text: string): Buffer {
  const bits = Array.from(text, (letter) => {
    const value = LETTERS.indexOf(letter);
    if (value < 0) throw new RangeError("This is no base32");
    return value.toString(2).padStart(5, "0");
  }).join("");
  return Buffer.from((bits.match(/.{8}/g) ?? []).map((eight) => Number.parseInt(eight, 2)));
}
