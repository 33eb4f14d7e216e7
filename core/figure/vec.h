// Points, directions and turned frames in space, for the drawn body.
// Not here: anything about bodies or pictures.
#pragma once

#include <cmath>
#include <numbers>

namespace newel {

struct Vec3 {
  double x = 0;
  double y = 0;
  double z = 0;
};

inline Vec3 operator+(const Vec3& a, const Vec3& b) { return {a.x + b.x, a.y + b.y, a.z + b.z}; }
inline Vec3 operator-(const Vec3& a, const Vec3& b) { return {a.x - b.x, a.y - b.y, a.z - b.z}; }
inline Vec3 operator-(const Vec3& a) { return {-a.x, -a.y, -a.z}; }
inline Vec3 operator*(const Vec3& a, double k) { return {a.x * k, a.y * k, a.z * k}; }
inline double dot(const Vec3& a, const Vec3& b) { return a.x * b.x + a.y * b.y + a.z * b.z; }
inline Vec3 cross(const Vec3& a, const Vec3& b) {
  return {a.y * b.z - a.z * b.y, a.z * b.x - a.x * b.z, a.x * b.y - a.y * b.x};
}
inline double length(const Vec3& a) { return std::sqrt(dot(a, a)); }
inline double distance(const Vec3& a, const Vec3& b) { return length(a - b); }
inline Vec3 mix(const Vec3& a, const Vec3& b, double share) { return a + (b - a) * share; }
// `fallback` where `a` has no direction.
inline Vec3 unit(const Vec3& a, const Vec3& fallback) {
  const double size = length(a);
  return size < 1e-12 ? fallback : a * (1 / size);
}

inline double radians(double degrees) { return degrees * std::numbers::pi / 180; }
inline double degrees(double radians) { return radians * 180 / std::numbers::pi; }

// A turned frame: its own axes (forward, toward side a, up) seen from outside.
struct Turn {
  Vec3 x{1, 0, 0};
  Vec3 y{0, 1, 0};
  Vec3 z{0, 0, 1};
};

inline Vec3 operator*(const Turn& t, const Vec3& v) { return t.x * v.x + t.y * v.y + t.z * v.z; }
inline Turn operator*(const Turn& a, const Turn& b) { return {a * b.x, a * b.y, a * b.z}; }
inline Turn inverse(const Turn& t) {
  return {{t.x.x, t.y.x, t.z.x}, {t.x.y, t.y.y, t.z.y}, {t.x.z, t.y.z, t.z.z}};
}

// Turns about one axis, right-handed, degrees.
inline Turn aboutX(double deg) {
  const double c = std::cos(radians(deg));
  const double s = std::sin(radians(deg));
  return {{1, 0, 0}, {0, c, s}, {0, -s, c}};
}
inline Turn aboutY(double deg) {
  const double c = std::cos(radians(deg));
  const double s = std::sin(radians(deg));
  return {{c, 0, -s}, {0, 1, 0}, {s, 0, c}};
}
inline Turn aboutZ(double deg) {
  const double c = std::cos(radians(deg));
  const double s = std::sin(radians(deg));
  return {{c, s, 0}, {-s, c, 0}, {0, 0, 1}};
}

// A turn taken apart as aboutY(y) * aboutX(x) * aboutZ(z): bending about the body's own cross axis, then
// sideways, then about the limb itself. This is the order of joint angles that clinicians read (flexion,
// abduction, rotation; Grood and Suntay 1983, from memory). Degrees.
struct Angles {
  double y = 0;
  double x = 0;
  double z = 0;
};
inline Angles anglesOf(const Turn& t) {
  const double sine = std::fmin(1, std::fmax(-1, -t.z.y));
  return {degrees(std::atan2(t.z.x, t.z.z)), degrees(std::asin(sine)), degrees(std::atan2(t.x.y, t.y.y))};
}

// The turn whose up is `up` and whose forward lies as near `forward` as that allows.
inline Turn turnFrom(const Vec3& up, const Vec3& forward) {
  const Vec3 z = unit(up, {0, 0, 1});
  Vec3 x = forward - z * dot(forward, z);
  if (length(x) < 1e-9) x = std::fabs(z.x) < 0.9 ? Vec3{1, 0, 0} - z * z.x : Vec3{0, 1, 0} - z * z.y;
  x = unit(x, {1, 0, 0});
  return {x, cross(z, x), z};
}

// The shortest way from `a` to `b`, `share` of it done (0 to 1).
Turn between(const Turn& a, const Turn& b, double share);

// Ease of a hand or foot moved by a person from rest to rest: least jerk (Flash and Hogan 1985, from memory:
// 10 t^3 - 15 t^4 + 6 t^5). `t` outside 0 to 1 is clipped.
inline double personEase(double t) {
  const double u = std::fmin(1, std::fmax(0, t));
  return u * u * u * (10 - 15 * u + 6 * u * u);
}

}  // namespace newel
