import { openForgetful } from "#tests/support/temporary-store.ts";
import { storeSuite } from "./store-suite.ts";

storeSuite("sqlite, opened anew before each call", openForgetful, 5);
