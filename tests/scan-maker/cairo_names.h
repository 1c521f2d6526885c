// Cairo's types by name, for headers that do not include it.

#ifndef BENCHLEAF_TESTS_SCAN_MAKER_CAIRO_NAMES_H_
#define BENCHLEAF_TESTS_SCAN_MAKER_CAIRO_NAMES_H_

// NOLINTBEGIN(bugprone-reserved-identifier,cert-dcl37-c,cert-dcl51-cpp): as Cairo spells them
typedef struct _cairo cairo_t;
typedef struct _cairo_font_face cairo_font_face_t;
// NOLINTEND(bugprone-reserved-identifier,cert-dcl37-c,cert-dcl51-cpp)

#endif  // BENCHLEAF_TESTS_SCAN_MAKER_CAIRO_NAMES_H_
