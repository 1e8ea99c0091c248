import neo4j from "neo4j-driver";
import { describe, expect, it } from "vitest";
import { findServerProblem } from "#server/stores/neo4j/find-server-problem.ts";

/** Codes of Neo4j's status code reference, and of the driver. */
const failure = (code: string, message = "as it says"): Error =>
  new neo4j.Neo4jError(message, code as "N/A", "50N42", "a description");

describe("what a failure of a Neo4j server means", () => {
  it.each([
    ["ServiceUnavailable", "STORE_UNREACHABLE"],
    ["SessionExpired", "STORE_UNREACHABLE"],
    ["ProtocolError", "STORE_UNREACHABLE"],
    ["N/A", "STORE_UNREACHABLE"],
    ["Neo.ClientError.Security.Unauthorized", "STORE_UNREACHABLE"],
    ["Neo.ClientError.Security.AuthenticationRateLimit", "STORE_UNREACHABLE"],
    ["Neo.ClientError.Database.DatabaseNotFound", "STORE_UNREACHABLE"],
    ["Neo.TransientError.General.DatabaseUnavailable", "STORE_UNREACHABLE"],
    ["Neo.ClientError.Transaction.TransactionTimedOutClientConfiguration", "STORE_UNREACHABLE"],
    ["Neo.DatabaseError.General.UnknownError", "STORE_UNREACHABLE"],
    ["Neo.TransientError.General.MemoryPoolOutOfMemoryError", "STORE_FULL"],
    ["Neo.TransientError.Transaction.DeadlockDetected", "STORE_LOCKED"],
    ["Neo.ClientError.General.ForbiddenOnReadOnlyDatabase", "STORE_LOCKED"],
    ["Neo.ClientError.Cluster.NotALeader", "STORE_LOCKED"],
    ["Neo.DatabaseError.General.StorageDamageDetected", "STORE_CORRUPT"],
  ])("[S11] %s is %s", (code, meant) => {
    const problem = findServerProblem(failure(code));
    expect(problem?.code).toBe(meant);
    expect(problem?.message).toContain(code);
  });

  it("[S11] a full disk is STORE_FULL, whatever the code", () => {
    expect(
      findServerProblem(
        failure("Neo.DatabaseError.Transaction.TransactionLogError", "No space left on device"),
      )?.code,
    ).toBe("STORE_FULL");
  });

  it("[S11] a statement that is wrong is a defect, and so is what does not come from the server", () => {
    expect(findServerProblem(failure("Neo.ClientError.Statement.SyntaxError"))).toBeUndefined();
    expect(findServerProblem(failure("Neo.ClientError.Schema.ConstraintValidationFailed"))).toBeUndefined();
    expect(findServerProblem(new TypeError("x is not a function"))).toBeUndefined();
  });
});
