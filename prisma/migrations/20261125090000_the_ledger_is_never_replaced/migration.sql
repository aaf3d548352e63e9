-- INSERT OR REPLACE deletes the row it meets without firing a delete trigger (sqlite.org/lang_conflict.html), so a row of
-- the ledger that is met by another of the same number, key or reversal is refused before it is written.
CREATE TRIGGER "Entry_is_never_replaced" BEFORE INSERT ON "Entry"
WHEN EXISTS (SELECT 1 FROM "Entry" WHERE "id" = NEW."id") OR EXISTS (SELECT 1 FROM "Entry" WHERE "key" = NEW."key")
  OR EXISTS (SELECT 1 FROM "Entry" WHERE "reversesId" = NEW."reversesId")
BEGIN SELECT RAISE(ABORT, 'ledger-is-append-only'); END;
CREATE TRIGGER "Movement_is_never_replaced" BEFORE INSERT ON "Movement"
WHEN EXISTS (SELECT 1 FROM "Movement" WHERE "id" = NEW."id") OR EXISTS (SELECT 1 FROM "Movement" WHERE "key" = NEW."key")
  OR EXISTS (SELECT 1 FROM "Movement" WHERE "reversesId" = NEW."reversesId")
BEGIN SELECT RAISE(ABORT, 'ledger-is-append-only'); END;
