-- CreateTable
CREATE TABLE "Shape" (
    "id" INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
    "pieceId" INTEGER NOT NULL,
    "entryId" INTEGER NOT NULL,
    "source" TEXT NOT NULL,
    "chalkLine" TEXT,
    "outline" TEXT NOT NULL,
    "photoId" INTEGER,
    "photoPlace" TEXT,
    "photoErrorUm" INTEGER,
    CONSTRAINT "Shape_pieceId_fkey" FOREIGN KEY ("pieceId") REFERENCES "Piece" ("stockId") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Shape_entryId_fkey" FOREIGN KEY ("entryId") REFERENCES "Entry" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Shape_photoId_fkey" FOREIGN KEY ("photoId") REFERENCES "Photo" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Shape_source" CHECK ("source" IN ('stations', 'photo', 'cut')),
    CONSTRAINT "Shape_stations_kept" CHECK ("source" <> 'stations' OR "chalkLine" IS NOT NULL)
);

-- CreateTable
CREATE TABLE "Mark" (
    "id" INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
    "pieceId" INTEGER NOT NULL,
    "entryId" INTEGER NOT NULL,
    "kind" TEXT NOT NULL,
    "place" TEXT NOT NULL,
    "face" TEXT NOT NULL,
    "depthNm" BIGINT,
    "decision" TEXT NOT NULL,
    "note" TEXT NOT NULL DEFAULT '',
    "removedById" INTEGER,
    CONSTRAINT "Mark_pieceId_fkey" FOREIGN KEY ("pieceId") REFERENCES "Piece" ("stockId") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Mark_entryId_fkey" FOREIGN KEY ("entryId") REFERENCES "Entry" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Mark_removedById_fkey" FOREIGN KEY ("removedById") REFERENCES "Entry" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Mark_face" CHECK ("face" IN ('through', 'A', 'B')),
    CONSTRAINT "Mark_decision" CHECK ("decision" IN ('keep-out', 'fill', 'leave')),
    CONSTRAINT "Mark_depth" CHECK ("depthNm" IS NULL OR "depthNm" > 0)
);

-- CreateTable
CREATE TABLE "Cut" (
    "entryId" INTEGER NOT NULL PRIMARY KEY,
    "pieceId" INTEGER NOT NULL,
    "kind" TEXT NOT NULL,
    "lines" TEXT NOT NULL DEFAULT '[]',
    "kerfNm" BIGINT NOT NULL DEFAULT 0,
    "scrap" TEXT NOT NULL DEFAULT '[]',
    CONSTRAINT "Cut_entryId_fkey" FOREIGN KEY ("entryId") REFERENCES "Entry" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Cut_pieceId_fkey" FOREIGN KEY ("pieceId") REFERENCES "Piece" ("stockId") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Cut_kind" CHECK ("kind" IN ('cut', 'rip', 'resaw', 'break', 'unstrap', 'take')),
    CONSTRAINT "Cut_kerf" CHECK ("kerfNm" >= 0)
);

-- CreateTable
CREATE TABLE "PackBoard" (
    "id" INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
    "pieceId" INTEGER NOT NULL,
    "lengthNm" BIGINT NOT NULL,
    "widthNm" BIGINT NOT NULL,
    "takenById" INTEGER,
    CONSTRAINT "PackBoard_pieceId_fkey" FOREIGN KEY ("pieceId") REFERENCES "Piece" ("stockId") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "PackBoard_takenById_fkey" FOREIGN KEY ("takenById") REFERENCES "Entry" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "PackBoard_sizes" CHECK ("lengthNm" > 0 AND "widthNm" > 0)
);

-- CreateTable
CREATE TABLE "RoomLog" (
    "id" INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
    "placeId" INTEGER NOT NULL,
    "entryId" INTEGER NOT NULL,
    "takenOn" TEXT NOT NULL,
    "tenthsC" INTEGER NOT NULL,
    "humidityTenths" INTEGER NOT NULL,
    CONSTRAINT "RoomLog_placeId_fkey" FOREIGN KEY ("placeId") REFERENCES "Place" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "RoomLog_entryId_fkey" FOREIGN KEY ("entryId") REFERENCES "Entry" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "RoomLog_possible" CHECK ("tenthsC" BETWEEN -500 AND 800 AND "humidityTenths" BETWEEN 0 AND 1000)
);

-- CreateTable
CREATE TABLE "RoomSeason" (
    "id" INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
    "placeId" INTEGER NOT NULL,
    "entryId" INTEGER NOT NULL,
    "name" TEXT NOT NULL,
    "fromMonth" INTEGER NOT NULL,
    "tenthsC" INTEGER NOT NULL,
    "humidityTenths" INTEGER NOT NULL,
    "removedById" INTEGER,
    CONSTRAINT "RoomSeason_placeId_fkey" FOREIGN KEY ("placeId") REFERENCES "Place" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "RoomSeason_entryId_fkey" FOREIGN KEY ("entryId") REFERENCES "Entry" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "RoomSeason_removedById_fkey" FOREIGN KEY ("removedById") REFERENCES "Entry" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "RoomSeason_possible" CHECK ("tenthsC" BETWEEN -500 AND 800 AND "humidityTenths" BETWEEN 0 AND 1000),
    CONSTRAINT "RoomSeason_month" CHECK ("fromMonth" BETWEEN 1 AND 12)
);

-- RedefineTables
PRAGMA defer_foreign_keys=ON;
PRAGMA foreign_keys=OFF;
CREATE TABLE "new_Book" (
    "id" INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT DEFAULT 1,
    "name" TEXT NOT NULL,
    "timeZone" TEXT NOT NULL,
    "units" TEXT NOT NULL,
    "currency" TEXT NOT NULL,
    "dateOrder" TEXT NOT NULL,
    "demo" BOOLEAN NOT NULL DEFAULT false,
    "houseLengthNm" BIGINT NOT NULL DEFAULT 300000000,
    "houseWidthNm" BIGINT NOT NULL DEFAULT 100000000,
    "kerfNm" BIGINT NOT NULL DEFAULT 3200000,
    "revision" INTEGER NOT NULL DEFAULT 0,
    "labelSerial" INTEGER NOT NULL DEFAULT 0,
    "createdAt" DATETIME NOT NULL,
    CONSTRAINT "Book_one_row" CHECK ("id" = 1),
    CONSTRAINT "Book_units" CHECK ("units" IN ('metric', 'imperial')),
    CONSTRAINT "Book_date_order" CHECK ("dateOrder" IN ('day-first', 'month-first')),
    CONSTRAINT "Book_house_sizes" CHECK ("houseLengthNm" >= 0 AND "houseWidthNm" >= 0 AND "kerfNm" >= 0)
);
INSERT INTO "new_Book" ("createdAt", "currency", "dateOrder", "demo", "id", "labelSerial", "name", "revision", "timeZone", "units") SELECT "createdAt", "currency", "dateOrder", "demo", "id", "labelSerial", "name", "revision", "timeZone", "units" FROM "Book";
DROP TABLE "Book";
ALTER TABLE "new_Book" RENAME TO "Book";
CREATE TABLE "new_Piece" (
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
    "origin" TEXT NOT NULL DEFAULT '',
    "sawn" TEXT NOT NULL DEFAULT '',
    "sapwoodNm" BIGINT,
    "cupNm" BIGINT,
    "bowNm" BIGINT,
    "twistNm" BIGINT,
    "quarters" INTEGER,
    "surfacing" TEXT NOT NULL DEFAULT '',
    "grain" TEXT NOT NULL DEFAULT '',
    "faceA" TEXT NOT NULL DEFAULT '',
    "faceB" TEXT NOT NULL DEFAULT '',
    "sellerName" TEXT NOT NULL DEFAULT '',
    "sellerLengthNm" BIGINT,
    "sellerWidthNm" BIGINT,
    "sellerThicknessNm" BIGINT,
    "sellerVolumeMm3" BIGINT,
    "sellerMassMg" BIGINT,
    "sellerMcTenths" INTEGER,
    "shapeId" INTEGER,
    "cutId" INTEGER,
    "pairedWithId" INTEGER,
    CONSTRAINT "Piece_stockId_fkey" FOREIGN KEY ("stockId") REFERENCES "Stock" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Piece_shapeId_fkey" FOREIGN KEY ("shapeId") REFERENCES "Shape" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Piece_cutId_fkey" FOREIGN KEY ("cutId") REFERENCES "Cut" ("entryId") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Piece_pairedWithId_fkey" FOREIGN KEY ("pairedWithId") REFERENCES "Piece" ("stockId") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Piece_form" CHECK ("form" IN ('slab', 'board', 'pack', 'sheet', 'offcut')),
    CONSTRAINT "Piece_sizes" CHECK ("lengthNm" > 0 AND "thicknessNm" > 0 AND "widthStartNm" >= 0 AND "widthMiddleNm" >= 0 AND "widthEndNm" >= 0),
    CONSTRAINT "Piece_cost_has_currency" CHECK (("costMinor" IS NULL) = ("currency" IS NULL)),
    CONSTRAINT "Piece_sawn" CHECK ("sawn" IN ('', 'flat', 'quarter', 'mixed')),
    CONSTRAINT "Piece_grain" CHECK ("grain" IN ('', 'length', 'width', 'none')),
    CONSTRAINT "Piece_surfacing" CHECK ("surfacing" IN ('', 'rough', 'S2S', 'S4S')),
    CONSTRAINT "Piece_pair_of_two" CHECK ("pairedWithId" IS NULL OR "pairedWithId" <> "stockId")
);
INSERT INTO "new_Piece" ("costMinor", "currency", "flags", "flitch", "flitchNumber", "form", "lengthNm", "note", "receivedOn", "species", "stockId", "thicknessNm", "widthEndNm", "widthMiddleNm", "widthStartNm") SELECT "costMinor", "currency", "flags", "flitch", "flitchNumber", "form", "lengthNm", "note", "receivedOn", "species", "stockId", "thicknessNm", "widthEndNm", "widthMiddleNm", "widthStartNm" FROM "Piece";
DROP TABLE "Piece";
ALTER TABLE "new_Piece" RENAME TO "Piece";
CREATE UNIQUE INDEX "Piece_shapeId_key" ON "Piece"("shapeId");
CREATE UNIQUE INDEX "Piece_pairedWithId_key" ON "Piece"("pairedWithId");
CREATE INDEX "Piece_form_species_idx" ON "Piece"("form", "species");
CREATE INDEX "Piece_flitch_idx" ON "Piece"("flitch");
CREATE INDEX "Piece_cutId_idx" ON "Piece"("cutId");
CREATE TABLE "new_Reading" (
    "id" INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
    "pieceId" INTEGER NOT NULL,
    "entryId" INTEGER NOT NULL,
    "takenOn" TEXT NOT NULL,
    "mcTenths" INTEGER NOT NULL,
    "meter" TEXT NOT NULL,
    "spot" TEXT NOT NULL,
    "meterKind" TEXT NOT NULL DEFAULT '',
    "depthNm" BIGINT,
    "alongNm" BIGINT,
    "acrossNm" BIGINT,
    "speciesSetting" TEXT NOT NULL DEFAULT '',
    "woodTenthsC" INTEGER,
    "correctedTenths" INTEGER,
    "inheritedFromId" INTEGER,
    CONSTRAINT "Reading_pieceId_fkey" FOREIGN KEY ("pieceId") REFERENCES "Piece" ("stockId") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Reading_entryId_fkey" FOREIGN KEY ("entryId") REFERENCES "Entry" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Reading_inheritedFromId_fkey" FOREIGN KEY ("inheritedFromId") REFERENCES "Reading" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Reading_possible" CHECK ("mcTenths" BETWEEN 0 AND 2500 AND ("correctedTenths" IS NULL OR "correctedTenths" BETWEEN 0 AND 2500)),
    CONSTRAINT "Reading_meter_kind" CHECK ("meterKind" IN ('', 'pin', 'pinless')),
    CONSTRAINT "Reading_depth" CHECK ("depthNm" IS NULL OR "depthNm" >= 0)
);
INSERT INTO "new_Reading" ("entryId", "id", "mcTenths", "meter", "pieceId", "spot", "takenOn") SELECT "entryId", "id", "mcTenths", "meter", "pieceId", "spot", "takenOn" FROM "Reading";
DROP TABLE "Reading";
ALTER TABLE "new_Reading" RENAME TO "Reading";
CREATE INDEX "Reading_pieceId_takenOn_idx" ON "Reading"("pieceId", "takenOn");
PRAGMA foreign_keys=ON;
PRAGMA defer_foreign_keys=OFF;

-- CreateIndex
CREATE INDEX "Shape_pieceId_idx" ON "Shape"("pieceId");

-- CreateIndex
CREATE INDEX "Mark_pieceId_idx" ON "Mark"("pieceId");

-- CreateIndex
CREATE INDEX "Cut_pieceId_idx" ON "Cut"("pieceId");

-- CreateIndex
CREATE INDEX "PackBoard_pieceId_idx" ON "PackBoard"("pieceId");

-- CreateIndex
CREATE INDEX "PackBoard_takenById_idx" ON "PackBoard"("takenById");

-- CreateIndex
CREATE INDEX "RoomLog_placeId_takenOn_idx" ON "RoomLog"("placeId", "takenOn");

-- CreateIndex
CREATE INDEX "RoomSeason_placeId_idx" ON "RoomSeason"("placeId");
