#include "scan-maker/list_columns.h"

#include <algorithm>

namespace benchleaf::scanmaker {
namespace {

std::vector<ListCell> OrderOf(ListForm form) {
  switch (form) {
    case ListForm::kDesignatorLast:
      return {ListCell::kNumber, ListCell::kDescription, ListCell::kQuantity, ListCell::kDesignator};
    case ListForm::kNumberFirst:
      return {ListCell::kNumber, ListCell::kDesignator, ListCell::kDescription, ListCell::kQuantity};
    case ListForm::kNumberSecond:
      return {ListCell::kDesignator, ListCell::kNumber, ListCell::kDescription, ListCell::kQuantity};
    case ListForm::kItems:
      return {ListCell::kItem, ListCell::kNumber, ListCell::kDescription, ListCell::kQuantity};
    case ListForm::kColumns:
    case ListForm::kLeaders:
    case ListForm::kRuled:
      break;
  }
  return {ListCell::kDesignator, ListCell::kDescription, ListCell::kNumber, ListCell::kQuantity};
}

// The share of the table's width that a column takes; descriptions take what is left.
double ShareOf(ListCell cell, const ListLayout& layout) {
  const bool narrow = layout.abreast == 2;
  const bool crowded = layout.makers > 0;
  switch (cell) {
    case ListCell::kItem:
      return narrow ? 0.12 : 0.08;
    case ListCell::kDesignator:
      return crowded ? 0.12 : (narrow ? 0.19 : 0.16);
    case ListCell::kNumber:
      return crowded ? (narrow ? 0.18 : 0.15) : (narrow ? 0.29 : 0.22);
    case ListCell::kMaker:
      return narrow ? 0.17 : 0.1;
    case ListCell::kQuantity:
      return narrow ? 0.11 : 0.08;
    case ListCell::kDescription:
      break;
  }
  return 0;
}

std::string TitleOf(ListCell cell, int maker) {
  switch (cell) {
    case ListCell::kItem:
      return "ITEM";
    case ListCell::kDesignator:
      return "SYMBOL";
    case ListCell::kNumber:
      return "PART NO.";
    case ListCell::kMaker:
      return std::string("MAKER ") + static_cast<char>('A' + maker);  // invented makers have no names
    case ListCell::kQuantity:
      return "QTY";
    case ListCell::kDescription:
      break;
  }
  return "DESCRIPTION";
}

}  // namespace

std::vector<ListColumn> ColumnsOf(const ListLayout& layout, double left, double right, bool hardware) {
  std::vector<ListColumn> columns;
  double taken = 0;
  const auto add = [&](ListCell cell, int maker) {
    const double share = ShareOf(cell, layout);
    columns.push_back({cell, maker, TitleOf(cell, maker), 0, share * (right - left)});
    taken += share;
  };
  for (const ListCell cell : OrderOf(layout.form)) {
    if ((cell == ListCell::kQuantity && !layout.quantity) || (cell == ListCell::kDesignator && hardware)) {
      continue;
    }
    add(cell, 0);
    for (int maker = 0; cell == ListCell::kNumber && maker < layout.makers; ++maker) {
      add(ListCell::kMaker, maker);
    }
  }
  double x = left;
  for (ListColumn& column : columns) {
    column.x = x;
    if (column.cell == ListCell::kDescription) {
      column.width = (1 - taken) * (right - left);
    }
    x += column.width;
    if (column.cell == ListCell::kDescription) {
      column.width *= layout.description_share;
    }
  }
  return columns;
}

}  // namespace benchleaf::scanmaker
