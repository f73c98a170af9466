//! The limb as an implicit solid: the distance from any point to the skin, and the surface as a mesh.

mod blend;
mod cone;
mod field;
mod lanes;
mod lattice;
mod mesh;
mod near;
mod sample;

pub use blend::{smooth_max, smooth_min};
pub use cone::Cone;
pub use field::{Blends, Field, Walk};
pub use mesh::{EVERYWHERE, Mesh, surface};
pub use near::Near;
pub use sample::{BESIDE, NearSolid, Solid, each, lifted, outwards};
