-- CreateTable
CREATE TABLE "JobPart" (
    "id" INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
    "jobId" INTEGER NOT NULL,
    "entryId" INTEGER NOT NULL,
    "kind" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "count" INTEGER NOT NULL DEFAULT 1,
    "shape" TEXT NOT NULL DEFAULT '',
    "lengthNm" BIGINT,
    "widthNm" BIGINT,
    "thicknessNm" BIGINT,
    "note" TEXT NOT NULL DEFAULT '',
    "removedById" INTEGER,
    CONSTRAINT "JobPart_jobId_fkey" FOREIGN KEY ("jobId") REFERENCES "Job" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "JobPart_entryId_fkey" FOREIGN KEY ("entryId") REFERENCES "Entry" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "JobPart_removedById_fkey" FOREIGN KEY ("removedById") REFERENCES "Entry" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "JobPart_kind" CHECK ("kind" IN ('top', 'base', 'other')),
    CONSTRAINT "JobPart_count" CHECK ("count" > 0)
);

-- CreateTable
CREATE TABLE "Need" (
    "id" INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
    "jobId" INTEGER NOT NULL,
    "entryId" INTEGER NOT NULL,
    "partId" INTEGER,
    "stepId" INTEGER,
    "liftId" INTEGER,
    "kind" TEXT NOT NULL,
    "species" TEXT NOT NULL DEFAULT '',
    "form" TEXT NOT NULL DEFAULT '',
    "lengthNm" BIGINT,
    "widthNm" BIGINT,
    "thicknessNm" BIGINT,
    "productId" INTEGER,
    "systemId" INTEGER,
    "resinPart" TEXT,
    "unit" TEXT NOT NULL,
    "amount" BIGINT NOT NULL,
    "surface" TEXT NOT NULL DEFAULT '',
    "note" TEXT NOT NULL DEFAULT '',
    "removedById" INTEGER,
    CONSTRAINT "Need_jobId_fkey" FOREIGN KEY ("jobId") REFERENCES "Job" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Need_entryId_fkey" FOREIGN KEY ("entryId") REFERENCES "Entry" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Need_partId_fkey" FOREIGN KEY ("partId") REFERENCES "JobPart" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Need_stepId_fkey" FOREIGN KEY ("stepId") REFERENCES "Step" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Need_liftId_fkey" FOREIGN KEY ("liftId") REFERENCES "Lift" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Need_productId_fkey" FOREIGN KEY ("productId") REFERENCES "Product" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Need_systemId_fkey" FOREIGN KEY ("systemId") REFERENCES "ResinSystem" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Need_removedById_fkey" FOREIGN KEY ("removedById") REFERENCES "Entry" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Need_kind" CHECK ("kind" IN ('wood', 'material')),
    CONSTRAINT "Need_unit" CHECK ("unit" IN ('mg', 'uL', 'piece')),
    CONSTRAINT "Need_amount" CHECK ("amount" > 0),
    CONSTRAINT "Need_part_of_a_system" CHECK (("systemId" IS NULL) = ("resinPart" IS NULL)),
    CONSTRAINT "Need_of_something" CHECK ("kind" = 'wood' OR ("productId" IS NULL) <> ("systemId" IS NULL))
);

-- CreateTable
CREATE TABLE "Step" (
    "id" INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
    "jobId" INTEGER NOT NULL,
    "entryId" INTEGER NOT NULL,
    "kind" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "day" TEXT NOT NULL,
    "sort" INTEGER NOT NULL DEFAULT 0,
    "pourId" INTEGER,
    "productId" INTEGER,
    "coatNr" INTEGER,
    "note" TEXT NOT NULL DEFAULT '',
    "doneOn" TEXT,
    "doneById" INTEGER,
    "removedById" INTEGER,
    CONSTRAINT "Step_jobId_fkey" FOREIGN KEY ("jobId") REFERENCES "Job" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Step_entryId_fkey" FOREIGN KEY ("entryId") REFERENCES "Entry" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Step_pourId_fkey" FOREIGN KEY ("pourId") REFERENCES "Pour" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Step_productId_fkey" FOREIGN KEY ("productId") REFERENCES "Product" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Step_doneById_fkey" FOREIGN KEY ("doneById") REFERENCES "Entry" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Step_removedById_fkey" FOREIGN KEY ("removedById") REFERENCES "Entry" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Step_kind" CHECK ("kind" IN ('wood-dry', 'seal', 'lift', 'demould', 'flatten', 'coat', 'cure', 'assembly', 'delivery', 'other')),
    CONSTRAINT "Step_done_by" CHECK (("doneOn" IS NULL) = ("doneById" IS NULL))
);

-- CreateTable
CREATE TABLE "ClosedDay" (
    "id" INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
    "entryId" INTEGER NOT NULL,
    "fromDay" TEXT NOT NULL,
    "toDay" TEXT NOT NULL,
    "name" TEXT NOT NULL DEFAULT '',
    "removedById" INTEGER,
    CONSTRAINT "ClosedDay_entryId_fkey" FOREIGN KEY ("entryId") REFERENCES "Entry" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "ClosedDay_removedById_fkey" FOREIGN KEY ("removedById") REFERENCES "Entry" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "ClosedDay_order" CHECK ("fromDay" <= "toDay")
);

-- CreateTable
CREATE TABLE "PromiseLine" (
    "id" INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
    "entryId" INTEGER NOT NULL,
    "jobId" INTEGER NOT NULL,
    "stockId" INTEGER NOT NULL,
    "needId" INTEGER,
    "delta" BIGINT NOT NULL,
    "reversesId" INTEGER,
    CONSTRAINT "PromiseLine_entryId_fkey" FOREIGN KEY ("entryId") REFERENCES "Entry" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "PromiseLine_jobId_fkey" FOREIGN KEY ("jobId") REFERENCES "Job" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "PromiseLine_stockId_fkey" FOREIGN KEY ("stockId") REFERENCES "Stock" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "PromiseLine_needId_fkey" FOREIGN KEY ("needId") REFERENCES "Need" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "PromiseLine_reversesId_fkey" FOREIGN KEY ("reversesId") REFERENCES "PromiseLine" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "PromiseLine_changes" CHECK ("delta" <> 0)
);

-- CreateTable
CREATE TABLE "Promised" (
    "jobId" INTEGER NOT NULL,
    "stockId" INTEGER NOT NULL,
    "amount" BIGINT NOT NULL,

    PRIMARY KEY ("jobId", "stockId"),
    CONSTRAINT "Promised_jobId_fkey" FOREIGN KEY ("jobId") REFERENCES "Job" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Promised_stockId_fkey" FOREIGN KEY ("stockId") REFERENCES "Stock" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Promised_never_below_zero" CHECK ("amount" >= 0)
);

-- CreateTable
CREATE TABLE "Arriving" (
    "id" INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
    "entryId" INTEGER NOT NULL,
    "productId" INTEGER,
    "words" TEXT NOT NULL DEFAULT '',
    "amount" BIGINT NOT NULL,
    "dueOn" TEXT NOT NULL,
    "supplier" TEXT NOT NULL DEFAULT '',
    "costMinor" BIGINT,
    "currency" TEXT,
    "closedById" INTEGER,
    CONSTRAINT "Arriving_entryId_fkey" FOREIGN KEY ("entryId") REFERENCES "Entry" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Arriving_productId_fkey" FOREIGN KEY ("productId") REFERENCES "Product" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Arriving_closedById_fkey" FOREIGN KEY ("closedById") REFERENCES "Entry" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Arriving_amount" CHECK ("amount" > 0),
    CONSTRAINT "Arriving_cost_has_currency" CHECK (("costMinor" IS NULL) = ("currency" IS NULL))
);

-- CreateTable
CREATE TABLE "Sheet" (
    "id" INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
    "entryId" INTEGER NOT NULL,
    "systemId" INTEGER,
    "productId" INTEGER,
    "facts" TEXT NOT NULL,
    "file" TEXT,
    "fileName" TEXT NOT NULL DEFAULT '',
    "bytes" INTEGER,
    CONSTRAINT "Sheet_entryId_fkey" FOREIGN KEY ("entryId") REFERENCES "Entry" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Sheet_systemId_fkey" FOREIGN KEY ("systemId") REFERENCES "ResinSystem" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Sheet_productId_fkey" FOREIGN KEY ("productId") REFERENCES "Product" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Sheet_of_one" CHECK (("systemId" IS NULL) <> ("productId" IS NULL))
);

-- CreateTable
CREATE TABLE "Pour" (
    "id" INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
    "jobId" INTEGER NOT NULL,
    "entryId" INTEGER NOT NULL,
    "partId" INTEGER,
    "systemId" INTEGER NOT NULL,
    "name" TEXT NOT NULL,
    "plan" TEXT NOT NULL,
    "removedById" INTEGER,
    CONSTRAINT "Pour_jobId_fkey" FOREIGN KEY ("jobId") REFERENCES "Job" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Pour_entryId_fkey" FOREIGN KEY ("entryId") REFERENCES "Entry" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Pour_partId_fkey" FOREIGN KEY ("partId") REFERENCES "JobPart" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Pour_systemId_fkey" FOREIGN KEY ("systemId") REFERENCES "ResinSystem" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Pour_removedById_fkey" FOREIGN KEY ("removedById") REFERENCES "Entry" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Lift" (
    "id" INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
    "pourId" INTEGER NOT NULL,
    "nr" INTEGER NOT NULL,
    "stepId" INTEGER,
    "depthNm" BIGINT NOT NULL,
    "volumeUl" BIGINT NOT NULL,
    "batches" TEXT NOT NULL,
    "pouredById" INTEGER,
    "pouredOn" TEXT,
    "roomTenthsC" INTEGER,
    "humidityTenths" INTEGER,
    "photoId" INTEGER,
    "note" TEXT NOT NULL DEFAULT '',
    CONSTRAINT "Lift_pourId_fkey" FOREIGN KEY ("pourId") REFERENCES "Pour" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Lift_stepId_fkey" FOREIGN KEY ("stepId") REFERENCES "Step" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Lift_pouredById_fkey" FOREIGN KEY ("pouredById") REFERENCES "Entry" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Lift_photoId_fkey" FOREIGN KEY ("photoId") REFERENCES "Photo" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Lift_depth" CHECK ("depthNm" >= 0 AND "volumeUl" > 0 AND "nr" >= 0),
    CONSTRAINT "Lift_poured" CHECK (("pouredById" IS NULL) = ("pouredOn" IS NULL))
);

-- CreateTable
CREATE TABLE "Weighed" (
    "id" INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
    "entryId" INTEGER NOT NULL,
    "liftId" INTEGER NOT NULL,
    "batch" INTEGER NOT NULL,
    "part" TEXT NOT NULL,
    "stockId" INTEGER NOT NULL,
    "massMg" BIGINT NOT NULL,
    "beforeMg" BIGINT,
    "afterMg" BIGINT,
    CONSTRAINT "Weighed_entryId_fkey" FOREIGN KEY ("entryId") REFERENCES "Entry" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Weighed_liftId_fkey" FOREIGN KEY ("liftId") REFERENCES "Lift" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Weighed_stockId_fkey" FOREIGN KEY ("stockId") REFERENCES "Stock" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Weighed_part" CHECK ("part" IN ('A', 'B')),
    CONSTRAINT "Weighed_mass" CHECK ("massMg" > 0)
);

-- CreateTable
CREATE TABLE "Fault" (
    "id" INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
    "entryId" INTEGER NOT NULL,
    "kind" TEXT NOT NULL,
    "foundOn" TEXT NOT NULL,
    "jobId" INTEGER,
    "pourId" INTEGER,
    "liftId" INTEGER,
    "stockId" INTEGER,
    "place" TEXT,
    "depthNm" BIGINT,
    "note" TEXT NOT NULL DEFAULT '',
    "photoId" INTEGER,
    "settledById" INTEGER,
    CONSTRAINT "Fault_entryId_fkey" FOREIGN KEY ("entryId") REFERENCES "Entry" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Fault_jobId_fkey" FOREIGN KEY ("jobId") REFERENCES "Job" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Fault_pourId_fkey" FOREIGN KEY ("pourId") REFERENCES "Pour" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Fault_liftId_fkey" FOREIGN KEY ("liftId") REFERENCES "Lift" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Fault_stockId_fkey" FOREIGN KEY ("stockId") REFERENCES "Stock" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Fault_photoId_fkey" FOREIGN KEY ("photoId") REFERENCES "Photo" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Fault_settledById_fkey" FOREIGN KEY ("settledById") REFERENCES "Entry" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Fault_kind" CHECK ("kind" IN ('soft-spot', 'crack', 'bubbles', 'cloudy', 'delaminated', 'discoloured', 'other')),
    CONSTRAINT "Fault_depth" CHECK ("depthNm" IS NULL OR "depthNm" >= 0)
);

-- CreateTable
CREATE TABLE "Sample" (
    "id" INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
    "entryId" INTEGER NOT NULL,
    "name" TEXT NOT NULL,
    "liftId" INTEGER,
    "lotAId" INTEGER,
    "lotBId" INTEGER,
    "placeId" INTEGER,
    "madeOn" TEXT NOT NULL,
    "lookOn" TEXT,
    "note" TEXT NOT NULL DEFAULT '',
    "goneById" INTEGER,
    CONSTRAINT "Sample_entryId_fkey" FOREIGN KEY ("entryId") REFERENCES "Entry" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Sample_liftId_fkey" FOREIGN KEY ("liftId") REFERENCES "Lift" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Sample_lotAId_fkey" FOREIGN KEY ("lotAId") REFERENCES "Lot" ("stockId") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Sample_lotBId_fkey" FOREIGN KEY ("lotBId") REFERENCES "Lot" ("stockId") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Sample_placeId_fkey" FOREIGN KEY ("placeId") REFERENCES "Place" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Sample_goneById_fkey" FOREIGN KEY ("goneById") REFERENCES "Entry" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "SampleLook" (
    "id" INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
    "entryId" INTEGER NOT NULL,
    "sampleId" INTEGER NOT NULL,
    "lookedOn" TEXT NOT NULL,
    "result" TEXT NOT NULL,
    "note" TEXT NOT NULL DEFAULT '',
    "photoId" INTEGER,
    CONSTRAINT "SampleLook_entryId_fkey" FOREIGN KEY ("entryId") REFERENCES "Entry" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "SampleLook_sampleId_fkey" FOREIGN KEY ("sampleId") REFERENCES "Sample" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "SampleLook_photoId_fkey" FOREIGN KEY ("photoId") REFERENCES "Photo" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "SampleLook_result" CHECK ("result" IN ('sound', 'soft', 'yellowed', 'cracked', 'other'))
);

-- CreateTable
CREATE TABLE "Treatment" (
    "id" INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
    "entryId" INTEGER NOT NULL,
    "stockId" INTEGER NOT NULL,
    "kind" TEXT NOT NULL,
    "doneOn" TEXT NOT NULL,
    "tenthsC" INTEGER,
    "minutes" INTEGER,
    "note" TEXT NOT NULL DEFAULT '',
    CONSTRAINT "Treatment_entryId_fkey" FOREIGN KEY ("entryId") REFERENCES "Entry" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Treatment_stockId_fkey" FOREIGN KEY ("stockId") REFERENCES "Stock" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Treatment_kind" CHECK ("kind" IN ('warmed', 'stirred', 'strained', 'froze', 'overheated', 'crystals-seen'))
);

-- CreateTable
CREATE TABLE "Stocktake" (
    "id" INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
    "entryId" INTEGER NOT NULL,
    "placeId" INTEGER NOT NULL,
    "closedById" INTEGER,
    "posted" BOOLEAN NOT NULL DEFAULT false,
    CONSTRAINT "Stocktake_entryId_fkey" FOREIGN KEY ("entryId") REFERENCES "Entry" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Stocktake_placeId_fkey" FOREIGN KEY ("placeId") REFERENCES "Place" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Stocktake_closedById_fkey" FOREIGN KEY ("closedById") REFERENCES "Entry" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "StocktakeLine" (
    "id" INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
    "stocktakeId" INTEGER NOT NULL,
    "stockId" INTEGER,
    "code" TEXT NOT NULL DEFAULT '',
    "seenAt" DATETIME NOT NULL,
    "who" TEXT NOT NULL,
    "grossMg" BIGINT,
    "counted" BIGINT,
    CONSTRAINT "StocktakeLine_stocktakeId_fkey" FOREIGN KEY ("stocktakeId") REFERENCES "Stocktake" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "StocktakeLine_stockId_fkey" FOREIGN KEY ("stockId") REFERENCES "Stock" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "StocktakeLine_counts" CHECK (("grossMg" IS NULL OR "grossMg" >= 0) AND ("counted" IS NULL OR "counted" >= 0))
);

-- Columns are added in place, so that the tables keep their checks and triggers
ALTER TABLE "Book" ADD COLUMN "closedWeekdays" TEXT NOT NULL DEFAULT '';
ALTER TABLE "Book" ADD COLUMN "feedSecret" TEXT;

ALTER TABLE "Job" ADD COLUMN "stage" TEXT NOT NULL DEFAULT 'agreed'
    CONSTRAINT "Job_stage" CHECK ("stage" IN ('asked', 'quoted', 'agreed', 'making', 'curing', 'ready', 'delivered', 'dropped'));
ALTER TABLE "Job" ADD COLUMN "dueOn" TEXT;
ALTER TABLE "Job" ADD COLUMN "contact" TEXT NOT NULL DEFAULT '';
-- Jobs that were closed before stages were kept
UPDATE "Job" SET "stage" = CASE "state" WHEN 'done' THEN 'delivered' WHEN 'dropped' THEN 'dropped' ELSE 'agreed' END;

ALTER TABLE "Inspection" ADD COLUMN "pairLotId" INTEGER REFERENCES "Lot" ("stockId") ON DELETE RESTRICT ON UPDATE CASCADE;
ALTER TABLE "Inspection" ADD COLUMN "massMg" BIGINT;
ALTER TABLE "Inspection" ADD COLUMN "roomTenthsC" INTEGER;
ALTER TABLE "Inspection" ADD COLUMN "minutes" INTEGER;
ALTER TABLE "Inspection" ADD COLUMN "result" TEXT NOT NULL DEFAULT '';
CREATE INDEX "Inspection_pairLotId_idx" ON "Inspection"("pairLotId");

-- CreateIndex
CREATE INDEX "JobPart_jobId_idx" ON "JobPart"("jobId");

-- CreateIndex
CREATE INDEX "Need_jobId_idx" ON "Need"("jobId");

-- CreateIndex
CREATE INDEX "Need_productId_idx" ON "Need"("productId");

-- CreateIndex
CREATE INDEX "Need_systemId_idx" ON "Need"("systemId");

-- CreateIndex
CREATE INDEX "Need_stepId_idx" ON "Need"("stepId");

-- CreateIndex
CREATE INDEX "Need_liftId_idx" ON "Need"("liftId");

-- CreateIndex
CREATE INDEX "Step_jobId_day_idx" ON "Step"("jobId", "day");

-- CreateIndex
CREATE INDEX "Step_pourId_idx" ON "Step"("pourId");

-- CreateIndex
CREATE INDEX "Step_day_idx" ON "Step"("day");

-- CreateIndex
CREATE INDEX "ClosedDay_toDay_idx" ON "ClosedDay"("toDay");

-- CreateIndex
CREATE UNIQUE INDEX "PromiseLine_reversesId_key" ON "PromiseLine"("reversesId");

-- CreateIndex
CREATE INDEX "PromiseLine_entryId_idx" ON "PromiseLine"("entryId");

-- CreateIndex
CREATE INDEX "PromiseLine_jobId_idx" ON "PromiseLine"("jobId");

-- CreateIndex
CREATE INDEX "PromiseLine_stockId_idx" ON "PromiseLine"("stockId");

-- CreateIndex
CREATE INDEX "PromiseLine_needId_idx" ON "PromiseLine"("needId");

-- CreateIndex
CREATE INDEX "Promised_stockId_idx" ON "Promised"("stockId");

-- CreateIndex
CREATE INDEX "Arriving_productId_idx" ON "Arriving"("productId");

-- CreateIndex
CREATE UNIQUE INDEX "Sheet_file_key" ON "Sheet"("file");

-- CreateIndex
CREATE INDEX "Sheet_systemId_idx" ON "Sheet"("systemId");

-- CreateIndex
CREATE INDEX "Sheet_productId_idx" ON "Sheet"("productId");

-- CreateIndex
CREATE INDEX "Pour_jobId_idx" ON "Pour"("jobId");

-- CreateIndex
CREATE INDEX "Pour_systemId_idx" ON "Pour"("systemId");

-- CreateIndex
CREATE UNIQUE INDEX "Lift_stepId_key" ON "Lift"("stepId");

-- CreateIndex
CREATE INDEX "Lift_pouredById_idx" ON "Lift"("pouredById");

-- CreateIndex
CREATE UNIQUE INDEX "Lift_pourId_nr_key" ON "Lift"("pourId", "nr");

-- CreateIndex
CREATE INDEX "Weighed_liftId_batch_part_idx" ON "Weighed"("liftId", "batch", "part");

-- CreateIndex
CREATE INDEX "Weighed_stockId_idx" ON "Weighed"("stockId");

-- CreateIndex
CREATE INDEX "Weighed_entryId_idx" ON "Weighed"("entryId");

-- CreateIndex
CREATE INDEX "Fault_jobId_idx" ON "Fault"("jobId");

-- CreateIndex
CREATE INDEX "Fault_stockId_idx" ON "Fault"("stockId");

-- CreateIndex
CREATE INDEX "Fault_liftId_idx" ON "Fault"("liftId");

-- CreateIndex
CREATE INDEX "Sample_liftId_idx" ON "Sample"("liftId");

-- CreateIndex
CREATE INDEX "Sample_lotAId_idx" ON "Sample"("lotAId");

-- CreateIndex
CREATE INDEX "Sample_lotBId_idx" ON "Sample"("lotBId");

-- CreateIndex
CREATE INDEX "Sample_lookOn_idx" ON "Sample"("lookOn");

-- CreateIndex
CREATE INDEX "SampleLook_sampleId_idx" ON "SampleLook"("sampleId");

-- CreateIndex
CREATE INDEX "Treatment_stockId_idx" ON "Treatment"("stockId");

-- CreateIndex
CREATE INDEX "Stocktake_placeId_idx" ON "Stocktake"("placeId");

-- CreateIndex
CREATE INDEX "StocktakeLine_stockId_idx" ON "StocktakeLine"("stockId");

-- CreateIndex
CREATE UNIQUE INDEX "StocktakeLine_stocktakeId_stockId_code_key" ON "StocktakeLine"("stocktakeId", "stockId", "code");

-- What was promised and what was weighed out is appended, like the ledger it belongs to
CREATE TRIGGER "PromiseLine_is_never_edited" BEFORE UPDATE ON "PromiseLine" BEGIN SELECT RAISE(ABORT, 'ledger-is-append-only'); END;
CREATE TRIGGER "PromiseLine_is_never_deleted" BEFORE DELETE ON "PromiseLine" BEGIN SELECT RAISE(ABORT, 'ledger-is-append-only'); END;
CREATE TRIGGER "Weighed_is_never_edited" BEFORE UPDATE ON "Weighed" BEGIN SELECT RAISE(ABORT, 'ledger-is-append-only'); END;
CREATE TRIGGER "Weighed_is_never_deleted" BEFORE DELETE ON "Weighed" BEGIN SELECT RAISE(ABORT, 'ledger-is-append-only'); END;
CREATE TRIGGER "SampleLook_is_never_edited" BEFORE UPDATE ON "SampleLook" BEGIN SELECT RAISE(ABORT, 'ledger-is-append-only'); END;
CREATE TRIGGER "SampleLook_is_never_deleted" BEFORE DELETE ON "SampleLook" BEGIN SELECT RAISE(ABORT, 'ledger-is-append-only'); END;
CREATE TRIGGER "Treatment_is_never_edited" BEFORE UPDATE ON "Treatment" BEGIN SELECT RAISE(ABORT, 'ledger-is-append-only'); END;
CREATE TRIGGER "Treatment_is_never_deleted" BEFORE DELETE ON "Treatment" BEGIN SELECT RAISE(ABORT, 'ledger-is-append-only'); END;
