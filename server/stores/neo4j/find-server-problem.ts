import { Neo4jError } from "neo4j-driver";
import { type Problem, type ProblemCode, problem } from "../../domain/problem.ts";

type Meaning = readonly [says: RegExp, code: ProblemCode, message: string];

/** What a code of the server or the driver means (Neo4j status codes); the first that fits. `ProtocolError` is said of a connection that breaks while it is made, too. */
const MEANINGS: readonly Meaning[] = [
  [
    /^Neo\.ClientError\.Security\./,
    "STORE_UNREACHABLE",
    "The Neo4j server does not let this user in; check user and password in SCRIBELINE_STORE.",
  ],
  [
    /^Neo\.ClientError\.Database\.DatabaseNotFound$/,
    "STORE_UNREACHABLE",
    "The Neo4j server has no database of that name; check SCRIBELINE_STORE.",
  ],
  [
    /\.(MemoryPoolOutOfMemoryError|TransactionOutOfMemoryError|OutOfMemoryError|StackOverFlowError|OutOfDiskSpace)$/,
    "STORE_FULL",
    "The Neo4j server has no room for this; nothing was written. Give it more memory or disk and try again.",
  ],
  [
    /\.(ForbiddenOnReadOnlyDatabase|WriteOnReadOnlyAccessDatabase|NotALeader|ReadOnly)$/,
    "STORE_LOCKED",
    "The Neo4j server can only be read here; nothing was written. Ask the server that takes writes.",
  ],
  [
    /\.(LockAcquisitionTimeout|DeadlockDetected|LockClientStopped|LockTimeout)$/,
    "STORE_LOCKED",
    "Another program is writing to the store; nothing was written here. Try again.",
  ],
  [
    /\.(StorageDamageDetected|IndexCorruptionDetected|TransactionLogError)$/,
    "STORE_CORRUPT",
    "The Neo4j server finds its files damaged. Restore the last sound dump into an empty store.",
  ],
  [
    /\.(TransactionTimedOut|TransactionTimedOutClientConfiguration|Terminated|TransactionTerminated)$/,
    "STORE_UNREACHABLE",
    "The Neo4j server did not answer in time, or was told to stop; try again.",
  ],
  [
    /^(ServiceUnavailable|SessionExpired|ProtocolError|N\/A)$|^Neo\.TransientError\.|^Neo\.DatabaseError\.|DatabaseUnavailable$/,
    "STORE_UNREACHABLE",
    "The Neo4j server cannot be reached or cannot work; see that it runs and try again.",
  ],
];

/** Says what a failure of the server means for the person who keeps the store; `undefined` if it is a defect of ours. */
export function findServerProblem(failure: unknown): Problem | undefined {
  if (!(failure instanceof Neo4jError)) return undefined;
  const detail = `Neo4j says: ${failure.code}: ${firstLine(failure.message)}`;
  if (/no space left|not enough space/i.test(failure.message))
    return problem(
      "STORE_FULL",
      `The disk of the Neo4j server is full; make room and try again. (${detail})`,
    );
  const meaning = MEANINGS.find(([says]) => says.test(failure.code));
  return meaning && problem(meaning[1], `${meaning[2]} (${detail})`);
}

const firstLine = (text: string): string => text.split("\n", 1)[0] ?? "";
