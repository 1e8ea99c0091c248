import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { changeText, keepInOrder, rememberText, textsOf } from "#server/chain/change-text.ts";
import { canonicalJson, isInOrder } from "#server/domain/canonical-json.ts";
import type { Change } from "#server/domain/change.ts";
import { frozenCopy } from "#server/domain/frozen-copy.ts";
import { anyHistory } from "#tests/support/any-history.ts";
import { adding, aTerm } from "#tests/support/build-change.ts";

/** RFC 8785 written out: members sorted by UTF-16 code unit, in whatever order they came. */
function slowly(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(slowly).join(",")}]`;
  if (typeof value !== "object" || value === null) return JSON.stringify(value);
  const names = Object.keys(value).filter((name) => (value as Record<string, unknown>)[name] !== undefined);
  const members = names
    .sort()
    .map((name) => `${JSON.stringify(name)}:${slowly((value as Record<string, unknown>)[name])}`);
  return `{${members.join(",")}}`;
}

const anyValue = fc.letrec<{ value: unknown }>((tie) => ({
  value: fc.oneof(
    { depthSize: "small" },
    fc.string({ unit: "binary" }),
    fc.integer(),
    fc.double({ noNaN: true, noDefaultInfinity: true }),
    fc.constantFrom(null, true, false, "", -0),
    fc.array(tie("value"), { maxLength: 4 }),
    fc.dictionary(
      fc.oneof(fc.string({ maxLength: 3 }), fc.constantFrom("1", "10", "9", "constructor", "é", "z")),
      fc.option(tie("value"), { nil: undefined }),
      { maxKeys: 5 },
    ),
  ),
})).value;

describe("canonical JSON", () => {
  it("[S6] is the same whatever the order of the members", () => {
    fc.assert(
      fc.property(anyValue, (value) => {
        expect(canonicalJson(value)).toBe(slowly(value) ?? "null");
      }),
      { numRuns: 2_000 },
    );
  });

  it("[S6] of a value read from canonical JSON is that text", () => {
    fc.assert(
      fc.property(anyValue, (value) => {
        const text = canonicalJson(value);
        expect(canonicalJson(JSON.parse(text))).toBe(text);
      }),
      { numRuns: 1_000 },
    );
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY])("refuses %s, wherever it stands", (number) => {
    expect(() => canonicalJson({ a: [number] })).toThrow(TypeError);
    expect(isInOrder({ a: [number] })).toBe(false);
  });
});

describe("the text of a change", () => {
  it("[S6] made of its bodies is its canonical JSON, and each body is that of what is left standing", () => {
    fc.assert(
      fc.property(anyHistory, ({ changes }) => {
        for (const change of changes) {
          const texts = textsOf(change);
          expect(texts.change).toBe(canonicalJson(change));
          expect(texts.after).toEqual(
            change.map(({ after }) => (after === undefined ? undefined : canonicalJson(after))),
          );
        }
      }),
    );
  });

  it("that is kept in order is made once, and is the same", () => {
    const change = structuredClone(adding(aTerm("tool.saw"), aTerm("tool.axe"))) as Change;
    const ordered = JSON.parse(canonicalJson(change)) as Change;
    expect(textsOf(keepInOrder(ordered))).toBe(textsOf(ordered));
    expect(textsOf(ordered)).toEqual(textsOf(change));
    expect(changeText(ordered)).toBe(canonicalJson(change));
    expect(frozenCopy(ordered)).toBe(ordered);
    expect(() => Object.assign(ordered[1] as object, { kind: "claim" })).toThrow(TypeError);
  });

  it("whose members are in another order is not taken for one in order", () => {
    const change = keepInOrder([{ kind: "term", after: { ...aTerm("tool.saw") } }]);
    expect(changeText(change)).toBe(canonicalJson(change));
    expect(frozenCopy(change)).not.toBe(change);
  });

  it("that is remembered is that of a change nobody can alter any more", () => {
    const change = structuredClone(adding(aTerm("tool.saw"))) as Change;
    rememberText(change, canonicalJson(change));
    expect(() => Object.assign(change[0] as object, { kind: "claim" })).toThrow(TypeError);
    expect(changeText(change)).toBe(canonicalJson(change));
  });
});

describe("[S10] a frozen copy", () => {
  it("is the value itself only where nobody can alter anything of it", () => {
    const inner = { b: 1 };
    const outer = Object.freeze({ inner });
    const copy = frozenCopy(outer);
    inner.b = 2;
    expect(copy).toEqual({ inner: { b: 1 } });
    expect(frozenCopy(copy)).toBe(copy);
    expect(frozenCopy(Object.freeze({ b: 1, a: 2 }))).not.toBe(copy);
  });
});
