// Looks terms up: by their canonical text, by their forms, by their look-alikes, then as words of text.

#ifndef BENCHLEAF_STORE_FIND_H_
#define BENCHLEAF_STORE_FIND_H_

#include "benchleaf/extract/rules.h"
#include "benchleaf/store/index_reader.h"

#include <xapian.h>

#include <string>
#include <vector>

namespace benchleaf::store {

// As IndexReader::Find and IndexReader::Tube say. They throw Xapian::Error.
std::vector<FoundSighting> Find(const Xapian::Database& database, const Rules& rules, const FindQuery& query);
std::vector<FoundTube> FindTube(const Xapian::Database& database, const Rules& rules, const std::string& type);

}  // namespace benchleaf::store

#endif  // BENCHLEAF_STORE_FIND_H_
