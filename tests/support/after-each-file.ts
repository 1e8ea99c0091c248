import { afterAll } from "vitest";
import { doWhatIsLeft } from "./at-end.ts";

// Files share a worker, which is stopped without an exit of its own.
afterAll(doWhatIsLeft);
