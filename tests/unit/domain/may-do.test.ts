import { describe, expect, it } from "vitest";
import { type Caller, LOCAL_CALLER, ROLES, type Role } from "#server/domain/people/caller.ts";
import { type Action, LEAST_ROLE, mayDo } from "#server/domain/people/may-do.ts";

const as = (role: Role, id = "person.a"): Caller => ({ id, role, via: "session" });
const actions = Object.keys(LEAST_ROLE) as Action[];

describe("[C1] what a role may do", () => {
  it("begins with its least role and holds for every role above", () => {
    for (const action of actions) {
      const may = ROLES.map((role) => mayDo(as(role), action) === undefined);
      expect(may, action).toEqual(ROLES.map((_, place) => place >= ROLES.indexOf(LEAST_ROLE[action])));
    }
  });

  it("is nothing for nobody, and everything for whoever sits at a machine of their own", () => {
    for (const action of actions) {
      expect(mayDo(undefined, action)?.code).toBe("NOT_SIGNED_IN");
      expect(mayDo(LOCAL_CALLER, action, { by: "local" })).toBeUndefined();
    }
  });

  it("is refused in words that name the role it takes", () => {
    expect(mayDo(as("reader"), "decide on a proposal")).toMatchObject({
      code: "NOT_ALLOWED",
      message:
        "To decide on a proposal takes the role of reviewer; yours is reader. Ask an owner of the house.",
    });
  });
});

describe("[C2] a thing itself can forbid it", () => {
  it("where it is not shown to the caller", () => {
    const about = { by: "person.b", seenBy: ["person.c"] };
    expect(mayDo(as("owner"), "read an examination", about)?.code).toBe("NOT_ALLOWED");
    for (const id of ["person.b", "person.c"])
      expect(mayDo(as("reader", id), "read an examination", about)).toBeUndefined();
    expect(mayDo(as("reader"), "read an examination", { by: "person.b", seenBy: ["house"] })).toBeUndefined();
    expect(mayDo(as("reader"), "read an examination", { by: "person.b", seenBy: [] })?.code).toBe(
      "NOT_ALLOWED",
    );
  });

  it("where only its maker may change it", () => {
    expect(mayDo(as("owner"), "change a proposal", { by: "person.b" })?.code).toBe("NOT_ALLOWED");
    expect(mayDo(as("contributor"), "change a proposal", { by: "person.a" })).toBeUndefined();
  });

  it("where nobody decides on their own proposal in a shared house", () => {
    const own = { by: "person.a", isShared: true };
    expect(mayDo(as("owner"), "decide on a proposal", own)?.code).toBe("NOT_ALLOWED");
    expect(mayDo(as("reviewer"), "decide on a proposal", { ...own, by: "person.b" })).toBeUndefined();
    expect(mayDo(LOCAL_CALLER, "decide on a proposal", { by: "local", isShared: false })).toBeUndefined();
  });
});
