-- CreateIndex
CREATE INDEX "Movement_stockId_entryId_idx" ON "Movement"("stockId", "entryId");

-- CreateIndex
CREATE INDEX "Movement_placeToId_entryId_placeFromId_idx" ON "Movement"("placeToId", "entryId", "placeFromId");

-- CreateIndex
CREATE INDEX "Movement_placeFromId_entryId_placeToId_idx" ON "Movement"("placeFromId", "entryId", "placeToId");
