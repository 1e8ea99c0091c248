import { openTemporary } from "#tests/support/temporary-store.ts";
import { storeSuite } from "./store-suite.ts";

storeSuite("sqlite", openTemporary, 40);
