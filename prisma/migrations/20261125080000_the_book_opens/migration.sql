-- CreateTable
CREATE TABLE "Book" (
    "id" INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT DEFAULT 1,
    "name" TEXT NOT NULL,
    "timeZone" TEXT NOT NULL,
    "units" TEXT NOT NULL,
    "currency" TEXT NOT NULL,
    "dateOrder" TEXT NOT NULL,
    "demo" BOOLEAN NOT NULL DEFAULT false,
    "revision" INTEGER NOT NULL DEFAULT 0,
    "labelSerial" INTEGER NOT NULL DEFAULT 0,
    "createdAt" DATETIME NOT NULL,
    CONSTRAINT "Book_one_row" CHECK ("id" = 1),
    CONSTRAINT "Book_units" CHECK ("units" IN ('metric', 'imperial')),
    CONSTRAINT "Book_date_order" CHECK ("dateOrder" IN ('day-first', 'month-first'))
);

-- CreateTable
CREATE TABLE "Place" (
    "id" INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
    "parentId" INTEGER,
    "name" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "label" TEXT NOT NULL,
    CONSTRAINT "Place_parentId_fkey" FOREIGN KEY ("parentId") REFERENCES "Place" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Place_not_in_itself" CHECK ("parentId" IS NULL OR "parentId" <> "id")
);

-- CreateTable
CREATE TABLE "ResinSystem" (
    "id" INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
    "name" TEXT NOT NULL
);

-- CreateTable
CREATE TABLE "Product" (
    "id" INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
    "name" TEXT NOT NULL,
    "maker" TEXT NOT NULL DEFAULT '',
    "kind" TEXT NOT NULL,
    "unit" TEXT NOT NULL,
    "densityGramsPerLitre" INTEGER,
    "packageSize" BIGINT NOT NULL,
    "tareMg" BIGINT,
    "policyKind" TEXT NOT NULL,
    "statedLifeCount" INTEGER,
    "statedLifeUnit" TEXT,
    "statedLifeBasis" TEXT NOT NULL,
    "openedLifeCount" INTEGER,
    "openedLifeUnit" TEXT,
    "openedLifeBasis" TEXT NOT NULL,
    "careWindowDays" INTEGER NOT NULL,
    "freezingRuins" BOOLEAN NOT NULL DEFAULT false,
    "storageLeastTenthsC" INTEGER,
    "storageMostTenthsC" INTEGER,
    "colourShows" BOOLEAN NOT NULL DEFAULT false,
    "systemId" INTEGER,
    "part" TEXT,
    "hazards" TEXT NOT NULL DEFAULT '',
    "safetySheet" TEXT NOT NULL DEFAULT '',
    "note" TEXT NOT NULL DEFAULT '',
    "createdAt" DATETIME NOT NULL,
    CONSTRAINT "Product_systemId_fkey" FOREIGN KEY ("systemId") REFERENCES "ResinSystem" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Product_unit" CHECK ("unit" IN ('mg', 'uL', 'piece')),
    CONSTRAINT "Product_package_size" CHECK ("packageSize" > 0),
    CONSTRAINT "Product_policy_kind" CHECK ("policyKind" IN ('fixed', 'inspectable', 'keeps')),
    CONSTRAINT "Product_part" CHECK ("part" IS NULL OR ("part" IN ('A', 'B') AND "systemId" IS NOT NULL))
);

-- CreateTable
CREATE TABLE "Stock" (
    "id" INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
    "kind" TEXT NOT NULL,
    "label" TEXT,
    "quantity" BIGINT NOT NULL DEFAULT 0,
    "placeId" INTEGER,
    "condition" TEXT NOT NULL DEFAULT '',
    "hold" TEXT NOT NULL DEFAULT 'free',
    "ownerJobId" INTEGER,
    "opened" TEXT,
    "lastMovementId" INTEGER NOT NULL DEFAULT 0,
    CONSTRAINT "Stock_placeId_fkey" FOREIGN KEY ("placeId") REFERENCES "Place" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Stock_ownerJobId_fkey" FOREIGN KEY ("ownerJobId") REFERENCES "Job" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Stock_kind" CHECK ("kind" IN ('lot', 'container', 'piece')),
    CONSTRAINT "Stock_never_below_zero" CHECK ("quantity" >= 0),
    CONSTRAINT "Stock_one_piece" CHECK ("kind" <> 'piece' OR "quantity" <= 1),
    CONSTRAINT "Stock_lot_has_no_quantity" CHECK ("kind" <> 'lot' OR "quantity" = 0),
    CONSTRAINT "Stock_hold" CHECK ("hold" IN ('free', 'on-hold', 'quarantine', 'recalled'))
);

-- CreateTable
CREATE TABLE "Lot" (
    "stockId" INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
    "productId" INTEGER NOT NULL,
    "code" TEXT,
    "madeOn" TEXT,
    "madePrecision" TEXT,
    "madeConfirmed" BOOLEAN NOT NULL DEFAULT false,
    "bestBefore" TEXT,
    "bestPrecision" TEXT,
    "bestConfirmed" BOOLEAN NOT NULL DEFAULT false,
    "useBy" TEXT,
    "usePrecision" TEXT,
    "useConfirmed" BOOLEAN NOT NULL DEFAULT false,
    CONSTRAINT "Lot_stockId_fkey" FOREIGN KEY ("stockId") REFERENCES "Stock" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Lot_productId_fkey" FOREIGN KEY ("productId") REFERENCES "Product" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Container" (
    "stockId" INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
    "lotId" INTEGER NOT NULL,
    "productId" INTEGER NOT NULL,
    "size" BIGINT NOT NULL,
    "tareMg" BIGINT,
    "openedLifeCount" INTEGER,
    "openedLifeUnit" TEXT,
    "costMinor" BIGINT,
    "currency" TEXT,
    "receivedOn" TEXT NOT NULL,
    CONSTRAINT "Container_stockId_fkey" FOREIGN KEY ("stockId") REFERENCES "Stock" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Container_lotId_fkey" FOREIGN KEY ("lotId") REFERENCES "Lot" ("stockId") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Container_productId_fkey" FOREIGN KEY ("productId") REFERENCES "Product" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Container_size" CHECK ("size" > 0),
    CONSTRAINT "Container_tare" CHECK ("tareMg" IS NULL OR "tareMg" >= 0),
    CONSTRAINT "Container_cost_has_currency" CHECK (("costMinor" IS NULL) = ("currency" IS NULL))
);

-- CreateTable
CREATE TABLE "Piece" (
    "stockId" INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
    "form" TEXT NOT NULL,
    "species" TEXT NOT NULL,
    "lengthNm" BIGINT NOT NULL,
    "widthStartNm" BIGINT NOT NULL,
    "widthMiddleNm" BIGINT NOT NULL,
    "widthEndNm" BIGINT NOT NULL,
    "thicknessNm" BIGINT NOT NULL,
    "flags" TEXT NOT NULL DEFAULT '',
    "flitch" TEXT NOT NULL DEFAULT '',
    "flitchNumber" INTEGER,
    "costMinor" BIGINT,
    "currency" TEXT,
    "receivedOn" TEXT NOT NULL,
    "note" TEXT NOT NULL DEFAULT '',
    CONSTRAINT "Piece_stockId_fkey" FOREIGN KEY ("stockId") REFERENCES "Stock" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Piece_form" CHECK ("form" IN ('slab', 'board', 'sheet', 'offcut')),
    CONSTRAINT "Piece_sizes" CHECK ("lengthNm" > 0 AND "thicknessNm" > 0 AND "widthStartNm" > 0 AND "widthMiddleNm" > 0 AND "widthEndNm" > 0),
    CONSTRAINT "Piece_cost_has_currency" CHECK (("costMinor" IS NULL) = ("currency" IS NULL))
);

-- CreateTable
CREATE TABLE "Reading" (
    "id" INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
    "pieceId" INTEGER NOT NULL,
    "entryId" INTEGER NOT NULL,
    "takenOn" TEXT NOT NULL,
    "mcTenths" INTEGER NOT NULL,
    "meter" TEXT NOT NULL,
    "spot" TEXT NOT NULL,
    CONSTRAINT "Reading_pieceId_fkey" FOREIGN KEY ("pieceId") REFERENCES "Piece" ("stockId") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Reading_entryId_fkey" FOREIGN KEY ("entryId") REFERENCES "Entry" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Reading_possible" CHECK ("mcTenths" BETWEEN 0 AND 2500)
);

-- CreateTable
CREATE TABLE "Photo" (
    "id" INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
    "stockId" INTEGER NOT NULL,
    "entryId" INTEGER NOT NULL,
    "file" TEXT NOT NULL,
    "width" INTEGER NOT NULL,
    "height" INTEGER NOT NULL,
    "bytes" INTEGER NOT NULL,
    "caption" TEXT NOT NULL DEFAULT '',
    CONSTRAINT "Photo_stockId_fkey" FOREIGN KEY ("stockId") REFERENCES "Stock" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Photo_entryId_fkey" FOREIGN KEY ("entryId") REFERENCES "Entry" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Inspection" (
    "id" INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
    "lotId" INTEGER NOT NULL,
    "containerId" INTEGER,
    "entryId" INTEGER NOT NULL,
    "kind" TEXT NOT NULL,
    "madeOn" TEXT NOT NULL,
    "passed" BOOLEAN NOT NULL,
    "validUntil" TEXT,
    "method" TEXT NOT NULL DEFAULT '',
    "note" TEXT NOT NULL DEFAULT '',
    "photoId" INTEGER,
    CONSTRAINT "Inspection_lotId_fkey" FOREIGN KEY ("lotId") REFERENCES "Lot" ("stockId") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Inspection_containerId_fkey" FOREIGN KEY ("containerId") REFERENCES "Container" ("stockId") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Inspection_entryId_fkey" FOREIGN KEY ("entryId") REFERENCES "Entry" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Inspection_photoId_fkey" FOREIGN KEY ("photoId") REFERENCES "Photo" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Code" (
    "id" INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
    "value" TEXT NOT NULL,
    "productId" INTEGER,
    "stockId" INTEGER,
    "placeId" INTEGER,
    "packageSize" BIGINT,
    "entryId" INTEGER NOT NULL,
    CONSTRAINT "Code_productId_fkey" FOREIGN KEY ("productId") REFERENCES "Product" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Code_stockId_fkey" FOREIGN KEY ("stockId") REFERENCES "Stock" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Code_placeId_fkey" FOREIGN KEY ("placeId") REFERENCES "Place" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Code_entryId_fkey" FOREIGN KEY ("entryId") REFERENCES "Entry" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Code_means_one_thing" CHECK ((CASE WHEN "productId" IS NULL THEN 0 ELSE 1 END) + (CASE WHEN "stockId" IS NULL THEN 0 ELSE 1 END) + (CASE WHEN "placeId" IS NULL THEN 0 ELSE 1 END) = 1)
);

-- CreateTable
CREATE TABLE "Job" (
    "id" INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
    "name" TEXT NOT NULL,
    "purpose" TEXT NOT NULL,
    "client" TEXT NOT NULL DEFAULT '',
    "dayOfUse" TEXT NOT NULL,
    "state" TEXT NOT NULL DEFAULT 'open',
    "note" TEXT NOT NULL DEFAULT '',
    "createdAt" DATETIME NOT NULL,
    CONSTRAINT "Job_purpose" CHECK ("purpose" IN ('client', 'own', 'test')),
    CONSTRAINT "Job_state" CHECK ("state" IN ('open', 'done', 'dropped'))
);

-- CreateTable
CREATE TABLE "Entry" (
    "id" INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
    "key" TEXT NOT NULL,
    "request" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "happenedAt" DATETIME NOT NULL,
    "writtenAt" DATETIME NOT NULL,
    "who" TEXT NOT NULL,
    "device" TEXT NOT NULL,
    "why" TEXT NOT NULL DEFAULT '',
    "reference" TEXT NOT NULL DEFAULT '',
    "jobId" INTEGER,
    "productId" INTEGER,
    "placeId" INTEGER,
    "stockId" INTEGER,
    "answer" TEXT NOT NULL,
    "verdict" TEXT,
    "verdictJson" TEXT,
    "overrideInspectionId" INTEGER,
    "reversesId" INTEGER,
    CONSTRAINT "Entry_reversesId_fkey" FOREIGN KEY ("reversesId") REFERENCES "Entry" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Entry_jobId_fkey" FOREIGN KEY ("jobId") REFERENCES "Job" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Entry_productId_fkey" FOREIGN KEY ("productId") REFERENCES "Product" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Entry_placeId_fkey" FOREIGN KEY ("placeId") REFERENCES "Place" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Entry_stockId_fkey" FOREIGN KEY ("stockId") REFERENCES "Stock" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Entry_overrideInspectionId_fkey" FOREIGN KEY ("overrideInspectionId") REFERENCES "Inspection" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Movement" (
    "id" INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
    "entryId" INTEGER NOT NULL,
    "key" TEXT NOT NULL,
    "stockId" INTEGER NOT NULL,
    "quantityDelta" BIGINT NOT NULL DEFAULT 0,
    "placeFromId" INTEGER,
    "placeToId" INTEGER,
    "conditionFrom" TEXT NOT NULL DEFAULT '',
    "conditionTo" TEXT NOT NULL DEFAULT '',
    "holdFrom" TEXT NOT NULL DEFAULT 'free',
    "holdTo" TEXT NOT NULL DEFAULT 'free',
    "jobFromId" INTEGER,
    "jobToId" INTEGER,
    "openedFrom" TEXT,
    "openedTo" TEXT,
    "reversesId" INTEGER,
    CONSTRAINT "Movement_entryId_fkey" FOREIGN KEY ("entryId") REFERENCES "Entry" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Movement_stockId_fkey" FOREIGN KEY ("stockId") REFERENCES "Stock" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Movement_placeFromId_fkey" FOREIGN KEY ("placeFromId") REFERENCES "Place" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Movement_placeToId_fkey" FOREIGN KEY ("placeToId") REFERENCES "Place" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Movement_jobFromId_fkey" FOREIGN KEY ("jobFromId") REFERENCES "Job" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Movement_jobToId_fkey" FOREIGN KEY ("jobToId") REFERENCES "Job" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Movement_reversesId_fkey" FOREIGN KEY ("reversesId") REFERENCES "Movement" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "SearchWord" (
    "id" INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
    "word" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "refId" INTEGER NOT NULL
);

-- CreateIndex
CREATE UNIQUE INDEX "Place_label_key" ON "Place"("label");

-- CreateIndex
CREATE INDEX "Place_parentId_idx" ON "Place"("parentId");

-- CreateIndex
CREATE UNIQUE INDEX "ResinSystem_name_key" ON "ResinSystem"("name");

-- CreateIndex
CREATE INDEX "Product_name_idx" ON "Product"("name");

-- CreateIndex
CREATE INDEX "Product_systemId_idx" ON "Product"("systemId");

-- CreateIndex
CREATE UNIQUE INDEX "Stock_label_key" ON "Stock"("label");

-- CreateIndex
CREATE INDEX "Stock_placeId_kind_idx" ON "Stock"("placeId", "kind");

-- CreateIndex
CREATE INDEX "Stock_ownerJobId_idx" ON "Stock"("ownerJobId");

-- CreateIndex
CREATE INDEX "Stock_hold_idx" ON "Stock"("hold");

-- CreateIndex
CREATE INDEX "Stock_condition_idx" ON "Stock"("condition");

-- CreateIndex
CREATE UNIQUE INDEX "Lot_productId_code_key" ON "Lot"("productId", "code");

-- CreateIndex
CREATE INDEX "Container_lotId_idx" ON "Container"("lotId");

-- CreateIndex
CREATE INDEX "Container_productId_idx" ON "Container"("productId");

-- CreateIndex
CREATE INDEX "Piece_form_species_idx" ON "Piece"("form", "species");

-- CreateIndex
CREATE INDEX "Reading_pieceId_takenOn_idx" ON "Reading"("pieceId", "takenOn");

-- CreateIndex
CREATE UNIQUE INDEX "Photo_file_key" ON "Photo"("file");

-- CreateIndex
CREATE INDEX "Photo_stockId_idx" ON "Photo"("stockId");

-- CreateIndex
CREATE INDEX "Inspection_lotId_idx" ON "Inspection"("lotId");

-- CreateIndex
CREATE INDEX "Inspection_containerId_idx" ON "Inspection"("containerId");

-- CreateIndex
CREATE UNIQUE INDEX "Code_value_key" ON "Code"("value");

-- CreateIndex
CREATE INDEX "Code_productId_idx" ON "Code"("productId");

-- CreateIndex
CREATE INDEX "Job_state_dayOfUse_idx" ON "Job"("state", "dayOfUse");

-- CreateIndex
CREATE UNIQUE INDEX "Entry_key_key" ON "Entry"("key");

-- CreateIndex
CREATE UNIQUE INDEX "Entry_reversesId_key" ON "Entry"("reversesId");

-- CreateIndex
CREATE INDEX "Entry_jobId_idx" ON "Entry"("jobId");

-- CreateIndex
CREATE INDEX "Entry_productId_idx" ON "Entry"("productId");

-- CreateIndex
CREATE INDEX "Entry_placeId_idx" ON "Entry"("placeId");

-- CreateIndex
CREATE INDEX "Entry_stockId_idx" ON "Entry"("stockId");

-- CreateIndex
CREATE UNIQUE INDEX "Movement_key_key" ON "Movement"("key");

-- CreateIndex
CREATE UNIQUE INDEX "Movement_reversesId_key" ON "Movement"("reversesId");

-- CreateIndex
CREATE INDEX "Movement_stockId_id_idx" ON "Movement"("stockId", "id");

-- CreateIndex
CREATE INDEX "Movement_entryId_idx" ON "Movement"("entryId");

-- CreateIndex
CREATE INDEX "SearchWord_kind_word_refId_idx" ON "SearchWord"("kind", "word", "refId");

-- CreateIndex
CREATE INDEX "SearchWord_kind_refId_word_idx" ON "SearchWord"("kind", "refId", "word");

-- The ledger is appended, never edited: the database itself refuses.
CREATE TRIGGER "Entry_is_never_edited" BEFORE UPDATE ON "Entry" BEGIN SELECT RAISE(ABORT, 'ledger-is-append-only'); END;
CREATE TRIGGER "Entry_is_never_deleted" BEFORE DELETE ON "Entry" BEGIN SELECT RAISE(ABORT, 'ledger-is-append-only'); END;
CREATE TRIGGER "Movement_is_never_edited" BEFORE UPDATE ON "Movement" BEGIN SELECT RAISE(ABORT, 'ledger-is-append-only'); END;
CREATE TRIGGER "Movement_is_never_deleted" BEFORE DELETE ON "Movement" BEGIN SELECT RAISE(ABORT, 'ledger-is-append-only'); END;
