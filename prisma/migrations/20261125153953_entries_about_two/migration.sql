-- CreateTable
CREATE TABLE "EntryAlso" (
    "stockId" INTEGER NOT NULL,
    "entryId" INTEGER NOT NULL,

    PRIMARY KEY ("stockId", "entryId"),
    CONSTRAINT "EntryAlso_stockId_fkey" FOREIGN KEY ("stockId") REFERENCES "Stock" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "EntryAlso_entryId_fkey" FOREIGN KEY ("entryId") REFERENCES "Entry" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateIndex
CREATE INDEX "EntryAlso_entryId_idx" ON "EntryAlso"("entryId");
