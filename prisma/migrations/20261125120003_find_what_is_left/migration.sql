-- DropIndex
DROP INDEX "Stock_placeId_kind_idx";

-- CreateIndex
CREATE INDEX "Stock_placeId_kind_quantity_idx" ON "Stock"("placeId", "kind", "quantity");

-- A lot is found by its own code, beside words of its product: the words of the product are not kept with it again.
DELETE FROM "SearchWord" WHERE "kind" = 'lot' AND EXISTS (
  SELECT 1 FROM "Lot" l JOIN "SearchWord" p ON p."kind" = 'product' AND p."refId" = l."productId" AND p."word" = "SearchWord"."word"
  WHERE l."stockId" = "SearchWord"."refId"
);
